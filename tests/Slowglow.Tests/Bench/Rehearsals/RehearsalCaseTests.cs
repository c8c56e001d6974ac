using Slowglow.Bench.Rehearsals;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Bench.Rehearsals;

/// <summary>What is counted to the certain cure, and what to the end.</summary>
public sealed class RehearsalCaseTests
{
    private static readonly Probe Anode = new("V1.6", "V1.6", "GND", ProbeKind.Dc);

    [Fact]
    public void Readings_are_counted_to_the_certain_cure_and_judged_there()
    {
        // Certain of the wrong part after one reading; the next one, taken to prove it, shows the right one.
        var turned = Case(rank: 1, new(0.4, false, 0, 0), new(0.93, false, 1, 2), new(0.99, true, 2, 5));
        var never = Case(rank: 2, new(0.3, false, 0, 0), new(0.6, false, 1, 3));
        var report = new RehearsalReport(new(), [turned, never]);

        Assert.Equal((1 + 1) / 2.0, report.Readings);
        Assert.Equal((2 + 3) / 2.0, report.Minutes);
        Assert.Equal((2 + 1) / 2.0, report.ReadingsToTheEnd);
        Assert.Equal(0.5, report.Certain);
        Assert.Equal(0, report.CertainAndRight);
        Assert.Equal(0.5, report.First);
    }

    [Theory]
    [InlineData(0.71, 2, true)]
    [InlineData(0.69, 2, false)]
    [InlineData(0.99, 1, false)]
    public void A_claim_for_a_good_part_counts_as_it_stands_at_the_end(double claimed, int rank, bool isOverclaimed) =>
        Assert.Equal(isOverclaimed, Case(rank, new(0.95, false, 0, 0), new(claimed, rank == 1, 1, 2)).IsOverclaimed);

    private static RehearsalCase Case(int rank, params Statement[] statements) =>
        new(
            new(HiddenKind.Single, [], null, ["R1"], "R1 open"),
            "silent",
            rank,
            "R1",
            statements[^1].Probability,
            1,
            false,
            0,
            0.9,
            statements[^1].Minutes,
            0,
            [.. statements.Skip(1).Select(s => new RehearsalStep(Anode, Setup.Default, null, "R1", s.Probability))],
            statements
        );
}
