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
        var unit = Hidden.Value.Hide(0, HiddenKind.Single, FaultDraw.Uniform, TestContext.Current.CancellationToken)!;
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
        var once = Hidden.Value.Hide(3, HiddenKind.Double, FaultDraw.Priors, TestContext.Current.CancellationToken)!;
        var again = new HiddenUnits(Amplifier.Value, 5, null, TestContext.Current.CancellationToken).Hide(
            3,
            HiddenKind.Double,
            FaultDraw.Priors,
            TestContext.Current.CancellationToken
        )!;
        Assert.Equal(once.Fault.Words, again.Fault.Words);
        Assert.Equal(once.Complaint, again.Complaint);
        Assert.Equal(once.Measure(Raw, Setup.Default)!.Value, again.Measure(Raw, Setup.Default)!.Value);
        Assert.Equal(2, once.Fault.Cures.Distinct().Count());
    }

    [Fact]
    public void Each_reading_costs_its_minutes()
    {
        var unit = Hidden.Value.Hide(1, HiddenKind.Single, FaultDraw.Uniform, TestContext.Current.CancellationToken)!;
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
        var healthy = new ExpectReadings(Amplifier.Value).Run(Setup.Default, [Raw], TestContext.Current.CancellationToken)[0];
        var random = new Random(1);
        double[] volts =
        [
            .. Enumerable
                .Range(0, 6)
                .Select(_ => new SpecimenMaker(Amplifier.Value.Sheet, random).Make(null)!.Value.Sold.Worlds)
                .Select(w =>
                    w.Ask(
                        Setup.Default,
                        [Array.Empty<Slowglow.Circuits.Fault>()],
                        [Raw],
                        MeterClass.Handheld,
                        null,
                        TestContext.Current.CancellationToken
                    )[0][0].Value
                ),
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

    /// <summary>With its emitter resistor open a follower still reads next to its base: 10 Mohm of meter are its load.</summary>
    [Fact]
    public void A_net_that_nothing_holds_goes_where_the_meter_lets_it()
    {
        var sheet = SheetReader
            .Read(
                """
                sheet: 1
                unit: Follower
                mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
                parts:
                  T1: { is: transformer 5 VA, windings: { P: { pins: 1-2, volts: 230 V, ohms: 900 }, S: { pins: 3-4, volts: 12 V, amps: 300 mA, ohms: 4 } } }
                  W1: wire MAINS.L -> T1.1
                  W2: wire MAINS.N -> T1.2
                  W3: wire T1.4 -> GND
                  D1: 1N4002 T1.3 -> RAW
                  C1: 1000u 35V RAW -> GND
                  U1: 7812 in=RAW gnd=GND out=P12
                  C4: 10u 25V P12 -> GND
                  R1: 10k P12 -> B
                  R2: 10k B -> GND
                  Q1: BC547B c=P12 b=B e=E
                  R3: 1k E -> GND
                  C2: 10u 25V E -> GND
                """
            )
            .Value!;
        var open = new HiddenFault(
            HiddenKind.Single,
            [new("R3", "", Slowglow.Circuits.FailureMode.Open)],
            null,
            ["R3"],
            "R3 open"
        );
        var unit = new HiddenUnit(Specimen.Of(sheet, 1)!, open, "silent", new BenchMeter(MeterClass.Handheld, new Random(1)));
        var volts = unit.Measure(new("E", "E", NetTable.Ground, ProbeKind.Dc), Setup.Default)!.Value;
        Assert.InRange(volts, 5.3, 5.9);
    }

    [Fact]
    public void A_wrong_part_is_in_no_catalogue()
    {
        var unit = Hidden.Value.Hide(0, HiddenKind.WrongValue, FaultDraw.Uniform, TestContext.Current.CancellationToken)!;
        Assert.Empty(unit.Fault.Faults);
        Assert.NotNull(unit.Fault.Fitted);
        Assert.NotEqual("", unit.Complaint);
    }
}
