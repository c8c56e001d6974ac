using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Tests.Workshop;

public sealed class JobStandingTests
{
    private static readonly TimelineEntry[] Entries =
    [
        new BookedIn { Sequence = 1, Complaint = "dull" },
        new SetupDescribed
        {
            Sequence = 2,
            Name = "bench",
            Keys = "",
        },
        new SetupDescribed
        {
            Sequence = 3,
            Name = "slow",
            Keys = "mains: 110 V",
        },
        new ReadingTaken
        {
            Sequence = 4,
            Line = "HT1 = 280",
            Setup = "bench",
        },
        new ReadingTaken
        {
            Sequence = 5,
            Line = "HT1 = 28",
            Setup = "bench",
        },
        new ReadingWithdrawn { Sequence = 6, Reading = 5 },
        new ComplaintChanged { Sequence = 7, Complaint = "dull, and hums" },
        new SetupChosen { Sequence = 8, Setup = "slow" },
        new NoteWritten { Sequence = 9, Text = "new lead" },
    ];

    [Fact]
    public void Timeline_replays_in_the_order_of_its_sequence_however_it_is_handed_over()
    {
        var standing = JobStanding.After(Entries.Reverse());

        Assert.Equal("dull, and hums", standing.Complaint);
        Assert.Equal("slow", standing.ChosenSetup);
        Assert.Equal(["bench", "slow"], standing.Setups.Select(s => s.Name));
        Assert.Equal("HT1 = 280", Assert.Single(standing.Readings).Line);
    }

    [Fact]
    public void Notes_and_changes_of_setup_are_no_evidence()
    {
        var standing = JobStanding.After(Entries);

        Assert.Equal((9, 7), (standing.LastSequence, standing.EvidenceSequence));
    }

    [Theory]
    [InlineData(JobState.OnTheBench, "on the bench")]
    [InlineData(JobState.AwaitingParts, " Awaiting Parts ")]
    public void State_is_read_as_it_stands_on_the_card(JobState state, string words) =>
        Assert.Equal(state, JobStateWords.Read(words));
}
