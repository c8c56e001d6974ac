using Slowglow.Bench.Questions;
using Slowglow.Bench.Rehearsals;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Bench.Rehearsals;

/// <summary>A hidden unit is one and the same unit for everybody, and no unit is quite the drawing.</summary>
public class HiddenUnitTests
{
    private static readonly Lazy<BenchUnit> Amplifier = new(() => SheetLibraryTests.Open("wheatear-p40"));
    private static readonly Lazy<HiddenUnits> Hidden = new(() => new HiddenUnits(Amplifier.Value, 5));
    private static readonly Probe Raw = new("RAW", "RAW", NetTable.Ground, ProbeKind.Dc);

    [Fact]
    public void It_reads_the_same_twice_and_to_another()
    {
        var unit = Hidden.Value.Hide(0, HiddenKind.Single, FaultDraw.Uniform)!;
        var first = unit.Measure(Raw, Setup.Default)!;
        Assert.Equal(first, unit.Measure(Raw, Setup.Default));
        var again = unit.Again();
        Assert.Equal((0, 0.0), (again.Readings.Count, again.Minutes));
        Assert.Equal(first, again.Measure(Raw, Setup.Default));
        Assert.Equal(2, unit.Readings.Count);
    }

    [Fact]
    public void It_can_be_hidden_again()
    {
        var once = Hidden.Value.Hide(3, HiddenKind.Double, FaultDraw.Priors)!;
        var again = new HiddenUnits(Amplifier.Value, 5).Hide(3, HiddenKind.Double, FaultDraw.Priors)!;
        Assert.Equal(once.Fault.Words, again.Fault.Words);
        Assert.Equal(once.Complaint, again.Complaint);
        Assert.Equal(once.Measure(Raw, Setup.Default)!.Value, again.Measure(Raw, Setup.Default)!.Value);
        Assert.Equal(2, once.Fault.Cures.Distinct().Count());
    }

    [Fact]
    public void Each_reading_costs_its_minutes()
    {
        var unit = Hidden.Value.Hide(1, HiddenKind.Single, FaultDraw.Uniform)!;
        unit.Measure(Raw, Setup.Default);
        var live = unit.Minutes;
        unit.Measure(new("R1", "RAW", NetTable.Ground, ProbeKind.Ohm), Setup.Cold);
        // The sheet gives a minute to get at RAW's capacitor nowhere; switching off and proving it costs more than the reading.
        Assert.True(live > 0);
        Assert.True(unit.Minutes - live > live);
    }

    [Fact]
    public void No_two_units_are_alike_and_all_are_near_the_drawing()
    {
        var healthy = new ExpectReadings(Amplifier.Value).Run(Setup.Default, [Raw])[0];
        var random = new Random(1);
        double[] volts =
        [
            .. Enumerable
                .Range(0, 6)
                .Select(_ => new SpecimenMaker(Amplifier.Value.Sheet, random).Make(null)!.Value.Sold)
                .Select(w => w.Ask(Setup.Default, [Array.Empty<Slowglow.Circuits.Fault>()], [Raw], MeterClass.Handheld)[0][0].Value),
        ];
        Assert.Equal(6, volts.Distinct().Count());
        var sigma = (healthy.High - healthy.Low) / 4;
        Assert.All(volts, v => Assert.InRange(v, healthy.Nominal - (4 * sigma), healthy.Nominal + (4 * sigma)));
        Assert.True(volts.Max() - volts.Min() > 0.5 * sigma);
    }

    [Fact]
    public void The_real_unit_has_other_laws_and_one_for_each_type()
    {
        var sheet = Amplifier.Value.Sheet;
        var real = LawDoubt.Of(sheet, new Random(2));
        double Is(Sheet of, string part) =>
            of.Parts.OfType<Slowglow.Sheets.Parts.Transistor.TransistorPart>().Single(p => p.Designator == part).Device["is"];
        Assert.NotEqual(Is(sheet, "Q6"), Is(real, "Q6"));
        Assert.Equal(Is(real, "Q6"), Is(real, "Q7"));
        Assert.NotEqual(Is(real, "Q4") / Is(sheet, "Q4"), Is(real, "Q6") / Is(sheet, "Q6"));
    }

    [Fact]
    public void A_wrong_part_is_in_no_catalogue()
    {
        var unit = Hidden.Value.Hide(0, HiddenKind.OutOfCatalogue, FaultDraw.Uniform)!;
        Assert.Empty(unit.Fault.Faults);
        Assert.NotNull(unit.Fault.Fitted);
        Assert.NotEqual("", unit.Complaint);
    }
}
