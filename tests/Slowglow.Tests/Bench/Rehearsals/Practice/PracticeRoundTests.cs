using Slowglow.Bench.Questions;
using Slowglow.Bench.Rehearsals.Practice;
using Slowglow.Sheets;

namespace Slowglow.Tests.Bench.Rehearsals.Practice;

/// <summary>A round is fair: the truth stays hidden, everything costs, and the same number is the same unit.</summary>
public class PracticeRoundTests
{
    private static readonly Lazy<BenchUnit> Amplifier = new(() => SheetLibraryTests.Open("wheatear-p40"));

    private static PracticeRound Begin(int number = 4) =>
        new StartPractice().Run(Amplifier.Value, number, null, TestContext.Current.CancellationToken).Value!;

    [Fact]
    public void The_truth_is_told_at_the_end_only_and_the_right_part_cures()
    {
        var given = Begin();
        Assert.Null(given.Truth);
        given.GiveUp();
        var truth = given.Truth!;

        var round = Begin();
        var other = round.Sheet.Parts.First(p =>
            !truth.Cures.Contains(p.Designator) && truth.Faults.All(f => f.Part != p.Designator)
        );
        Assert.False(round.Change(other.Designator.ToLowerInvariant()).Value!.Cured);
        Assert.False(round.IsOver);
        Assert.True(round.Change(truth.Cures[0]).Value!.Cured);
        Assert.True(round.IsFound);
        Assert.Equal(truth.Words, round.Truth!.Words);
        Assert.Equal(2 * PracticeRound.MinutesToChange, round.Minutes);
    }

    [Fact]
    public void Readings_show_what_belongs_there_and_cost_minutes()
    {
        var round = Begin();
        var reading = round.Measure("RAW", TestContext.Current.CancellationToken).Value!;
        Assert.True(reading.Belongs.Low < reading.Belongs.Nominal && reading.Belongs.Nominal < reading.Belongs.High);
        Assert.True(reading.Minutes > 0);
        Assert.True(round.Measure("R1 ohm", TestContext.Current.CancellationToken).Value!.Setup.PowerOff);
        Assert.Equal(2, round.Steps.Count);
        Assert.Equal(round.Minutes, round.Steps.Sum(s => s.Minutes));
    }

    [Theory]
    [InlineData("XYZ")]
    [InlineData("")]
    [InlineData("RAW florins")]
    public void What_cannot_be_measured_is_said_and_costs_nothing(string asked)
    {
        var round = Begin();
        var read = round.Measure(asked, TestContext.Current.CancellationToken);
        Assert.Null(read.Value);
        Assert.Contains(read.Findings, f => f.Severity == Severity.Error && f.Text.Length > 0);
        Assert.Equal(0, round.Minutes);
    }

    [Fact]
    public void A_round_that_is_over_takes_nothing_more()
    {
        var round = Begin();
        round.GiveUp();
        Assert.Contains(
            "over",
            round.Measure("RAW", TestContext.Current.CancellationToken).Findings[0].Text,
            StringComparison.Ordinal
        );
        Assert.Contains("over", round.Change("R1").Findings[0].Text, StringComparison.Ordinal);
        Assert.Empty(round.Steps);
    }

    [Fact]
    public void A_part_that_is_not_there_and_a_number_that_is_not_are_said()
    {
        Assert.Contains("no part 'R999'", Begin().Change("R999").Findings[0].Text, StringComparison.Ordinal);
        var none = new StartPractice().Run(Amplifier.Value, 0, null, TestContext.Current.CancellationToken);
        Assert.Null(none.Value);
        Assert.Contains("no unit number 0", none.Findings[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_program_plays_the_same_unit()
    {
        var round = Begin();
        var taken = round.Measure("RAW", TestContext.Current.CancellationToken).Value!;
        var way = round.ProgramsWay(TestContext.Current.CancellationToken);
        Assert.Equal(round.Complaint, way.Complaint);
        Assert.NotEmpty(way.Steps);
        foreach (var same in way.Steps.Where(s => s.Probe == taken.Probe && s.Setup == taken.Setup))
        {
            Assert.Equal(taken.Shown, same.Reading);
        }

        Assert.Single(round.Steps);
    }
}
