using Slowglow.Bench.Jobs.History;
using Slowglow.Circuits;
using Slowglow.Tests.Bench.Questions;
using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;
using Slowglow.Workshop.Units;
using Xunit;

namespace Slowglow.Tests.Bench.Jobs.History;

/// <summary>What past jobs came down to, as the shop's notes and a technician's list say it.</summary>
public sealed class JobHistoryTests
{
    [Theory]
    [InlineData("found R10 drifted up, 800k", "R10", FailureMode.Drifted)]
    [InlineData("Found: c4 leaky.", "C4", FailureMode.Leaky)]
    [InlineData("found V1 low emission in both halves", "V1", FailureMode.LowEmission)]
    [InlineData("found R10: replaced", "R10", null)]
    public void A_note_that_says_what_was_found_is_understood(string note, string part, FailureMode? mode)
    {
        var found = FoundText.ReadNote(note, Demo.Combo.Circuit);
        Assert.Equal((part, mode, 1), (found!.Part, found.Mode, found.Jobs));
    }

    [Theory]
    [InlineData("foundry sand in the case")]
    [InlineData("R10 looks brown")]
    [InlineData("found nothing")]
    public void Any_other_note_is_not(string note) => Assert.Null(FoundText.ReadNote(note, Demo.Combo.Circuit));

    [Fact]
    public void Repaired_jobs_count_once_each_by_their_last_word()
    {
        Job[] jobs =
        [
            Of(JobState.HandedOver, "found C4 leaky", "found R10 drifted up"),
            Of(JobState.ReadyToCollect, "found R10 drifted"),
            Of(JobState.OnSoak, "new valves"),
            Of(JobState.OnTheBench, "found V4 dead"),
        ];
        var past = JobHistory.Of(jobs, Demo.Combo.Circuit);
        Assert.Equal(2, past!.Jobs);
        Assert.Equal(2, past.Of("R10"));
        Assert.Null(JobHistory.Of(jobs[2..], Demo.Combo.Circuit));
    }

    [Fact]
    public void A_list_is_read_line_by_line_and_a_wrong_line_is_told()
    {
        var read = HistoryText.Read(
            "# the years 2019 to 2025\nR10 drifted up\nr10 drifted\n\nC4  # by ear\n",
            Demo.Combo.Circuit
        );
        Assert.Empty(read.Findings);
        Assert.Equal(3, read.Value!.Jobs);
        Assert.Equal(2, read.Value.Of("R10"));

        var wrong = HistoryText.Read("R10 drifted up\nR999 open\n", Demo.Combo.Circuit);
        var finding = Assert.Single(wrong.Findings);
        Assert.Null(wrong.Value);
        Assert.Equal(
            (2, "\"R999 open\" does not begin with a part of this sheet that can fail"),
            (finding.Place.Line, finding.Text)
        );
    }

    private static Job Of(JobState state, params string[] notes) =>
        new()
        {
            Number = 1,
            Customer = new Customer { Name = "Ottoline Marsh" },
            Unit = new UnitOnBench("Sallow & Finch", "Kittiwake 15", "", 230),
            Sheet = new DrawnSheet
            {
                Title = "Kittiwake 15",
                Text = "",
                AddedAt = DateTimeOffset.UnixEpoch,
            },
            BookedIn = DateTimeOffset.UnixEpoch,
            Timeline =
            [
                .. notes.Select((n, i) => new NoteWritten { Sequence = i + 1, Text = n }),
                new StateChanged { Sequence = notes.Length + 1, State = state },
            ],
        };
}
