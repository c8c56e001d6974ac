using Slowglow.Bench.Questions;
using Slowglow.Power.Overload;
using Slowglow.Sheets.Parts.Fuse;

namespace Slowglow.Tests.Power;

/// <summary>What switching on asks of a fuse, against the charging of a capacitor by hand.</summary>
public sealed class SwitchOnTests
{
    /// <summary>Ohms of the winding that feeds the reservoir, and of the mains winding with the outlet.</summary>
    private const double SecondaryOhms = 100;
    private const double PrimaryOhms = 20.4;
    private const double MainsVolts = 230;
    private const double RatedAmps = 0.1;

    /// <summary>Volts that the drawing promises under rated load, and those with what both windings drop put on top.</summary>
    private const double Promised = 255;
    private static readonly double OffLoad = Ratio * MainsVolts;

    /// <summary>Of the turns: Ratio × mains = promised + rated amperes × (secondary + Ratio² × primary), solved for the smaller root.</summary>
    private static double Ratio
    {
        get
        {
            var (square, constant) = (RatedAmps * PrimaryOhms, Promised + (RatedAmps * SecondaryOhms));
            return (MainsVolts - Math.Sqrt((MainsVolts * MainsVolts) - (4 * square * constant))) / (2 * square);
        }
    }

    private static SwitchOn? Of(string fuse, string reservoir = "47u", string beside = "") => new FindOverloads(
            BenchUnit
                .From(
                    $$"""
                    sheet: 1
                    unit: Test bed
                    mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
                    parts:
                      F1: {{fuse}} MAINS.L -> T1.1
                      T1:
                        is: transformer 60 VA
                        windings:
                          P: { pins: 1-2, volts: 230 V, ohms: 20 }
                          S: { pins: 3-4, volts: 255 V, amps: 100 mA, ohms: 100 }
                      W2: wire MAINS.N -> T1.2
                      R8: {{(beside.Length > 0 ? beside : "1M 2W")}} T1.1 -> MAINS.N
                      D1: 1N4007 T1.3 -> RAW
                      D2: 1N4007 T1.4 -> RAW
                      D3: 1N4007 GND -> T1.3
                      D4: 1N4007 GND -> T1.4
                      C1: {{reservoir}} 450V RAW -> GND
                      R9: 220k 1W RAW -> GND
                    """
                )
                .Value!
        ).Run("F1", TestContext.Current.CancellationToken).Value!.SwitchOn;

    /// <summary>Half of C V squared over the resistance it is charged through (any textbook of circuits), brought to the mains side.</summary>
    [Fact]
    public void An_empty_reservoir_asks_its_energy_over_the_resistance()
    {
        var crest = Math.Sqrt(2) * OffLoad;
        var byHand = 0.5 * 47e-6 * crest * crest / (PrimaryOhms + (SecondaryOhms / (Ratio * Ratio)));
        Assert.Equal(byHand, Of("fuse T500mA")!.SquareSeconds, 0.07 * byHand);
    }

    [Fact]
    public void Twice_the_reservoir_asks_twice()
    {
        var (one, two) = (Of("fuse T500mA")!.SquareSeconds, Of("fuse T500mA", "94u")!.SquareSeconds);
        Assert.Equal(2, two / one, 0.05);
    }

    /// <summary>IEC 60127-2, from memory: ten times for 20 ms, four times for 10 ms.</summary>
    [Theory]
    [InlineData(FuseSpeed.TimeLag, 0.5)]
    [InlineData(FuseSpeed.Quick, 0.04)]
    [InlineData(FuseSpeed.Unsaid, 0.04)]
    public void Least_that_melts_half_an_ampere(FuseSpeed speed, double squareSeconds) =>
        Assert.Equal(squareSeconds, FuseTime.LeastMelting(0.5, speed), 1e-12);

    [Fact]
    public void Says_that_charging_is_lost_in_what_the_unit_draws_anyway()
    {
        var answer = Of("fuse T6.3A", beside: "47 2kW")!;
        Assert.Contains("no surge for F1", answer.Words, StringComparison.Ordinal);
        Assert.Contains("running 4.9 A", answer.Words, StringComparison.Ordinal);
        Assert.True(double.IsNaN(answer.SquareSeconds));
    }

    [Theory]
    [InlineData("fuse T500mA", "stands that for years")]
    [InlineData("fuse F50mA", "may go at switching on")]
    public void Says_what_becomes_of_the_fuse(string fuse, string said) =>
        Assert.Contains(said, Of(fuse)!.Words, StringComparison.Ordinal);
}
