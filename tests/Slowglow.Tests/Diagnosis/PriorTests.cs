using Slowglow.Circuits;
using Slowglow.Diagnosis.Priors;
using Slowglow.Tests.ReferenceSolver;
using Xunit;

namespace Slowglow.Tests.Diagnosis;

public sealed class PriorTests
{
    private static readonly FailureFigures Figures = FailureFigures.Shipped;

    [Fact]
    public void Every_kind_has_a_rate_and_modes_that_sum_to_about_one()
    {
        foreach (var kind in Enum.GetValues<PartKind>())
        {
            Assert.True(Figures.Rate(kind) > 0, kind.ToString());
        }
        var sums = EmbeddedTable.Rows("modes.csv").GroupBy(r => r[0]).Select(g => (g.Key, g.Sum(r => double.Parse(r[2]))));
        Assert.All(sums.Where(s => s.Key is not ("Fuse" or "Lamp")), s => Assert.InRange(s.Item2, 0.98, 1.06));
    }

    /// <summary>A fault that no row weighs would be given the share of a mode nobody thought of.</summary>
    [Fact]
    public void Every_fault_of_the_demo_units_is_weighed_by_a_row()
    {
        var rows = EmbeddedTable.Rows("modes.csv").Select(r => (r[0], r[1])).ToHashSet();
        foreach (var folder in new[] { "kittiwake-15", "saltmarsh-lm2", "heronsgate-m60" })
        {
            var sheet = DemoSheets.Read(folder);
            var parts = sheet.Parts.ToDictionary(p => p.Designator);
            Assert.All(
                Circuit.From(sheet).Value!.Faults,
                f => Assert.Contains((PartKinds.Of(parts[f.Part]).ToString(), f.Mode.ToString()), rows)
            );
        }
    }

    [Fact]
    public void Every_row_names_its_source()
    {
        Assert.All(EmbeddedTable.Rows("rates.csv"), r => Assert.True(r[3].Length > 5, r[0]));
        Assert.All(EmbeddedTable.Rows("modes.csv"), r => Assert.True(r[4].Length > 5, r[0]));
        Assert.All(EmbeddedTable.Rows("practice.csv"), r => Assert.True(r[3].Length > 5, r[0]));
    }

    /// <summary>SD-18 (NSWC Crane), Resistors, Rev A, 2004: variable resistors fail about ten times as often as fixed ones.</summary>
    [Fact]
    public void Pots_fail_ten_times_as_often_as_film_resistors() =>
        Assert.Equal(10, Figures.Rate(PartKind.Pot) / Figures.Rate(PartKind.FilmResistor), 6);

    /// <summary>MIL-HDBK-338B (1998): film resistors open 0.59, parameter change 0.36, short 0.05.</summary>
    [Fact]
    public void Film_resistors_open_before_they_drift_and_hardly_short()
    {
        Assert.Equal(0.59, Figures.Share(PartKind.FilmResistor, FailureMode.Open));
        Assert.Equal(0.36, Figures.Share(PartKind.FilmResistor, FailureMode.Drifted));
        Assert.Equal(0.05, Figures.Share(PartKind.FilmResistor, FailureMode.Short));
    }

    [Fact]
    public void Valves_sit_high_and_joints_low()
    {
        Assert.True(Figures.RelativeRate(PartKind.Valve) > 10);
        Assert.True(Figures.RelativeRate(PartKind.Wire) < 1);
    }

    /// <summary>MIL-HDBK-217F Notice 2, sec 9.1: exp(1.1 S); from half to full rating that is exp(0.55).</summary>
    [Fact]
    public void Stress_raises_the_rate_by_the_published_law()
    {
        var half = StressRaise.Of(PartKind.FilmResistor, Watts(0.5));
        var full = StressRaise.Of(PartKind.FilmResistor, Watts(1.0));

        Assert.Equal(Math.Exp(0.55), full / half, 6);
        Assert.Equal(1, StressRaise.Of(PartKind.FilmResistor, null));
    }

    private static PartStress Watts(double ratio) => new("R1", ratio, ratio, 1, double.NaN, 1, double.NaN);
}
