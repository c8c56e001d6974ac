using Slowglow.Sheets.Parts.Inductor;
using Xunit;

namespace Slowglow.Tests.Circuits.Coils;

/// <summary>Coils by impedance: Pythagoras of copper and reactance.</summary>
public sealed class ReverbCoilTests
{
    private static SheetOnBench With(string coil) =>
        SheetOnBench.From(
            $$"""
            sheet: 1
            unit: Test bed
            mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
            parts:
              T1:
                is: transformer 5 VA
                windings:
                  P: { pins: 1-2, volts: 230 V }
                  S: { pins: 3-4, volts: 6 V }
              W1: wire MAINS.L -> T1.1
              W2: wire MAINS.N -> T1.2
              W3: wire T1.4 -> GND
              R9: 1k T1.3 -> GND
              TK1: {{coil}}
              R1: 100k OUT -> GND
            signal: { in: IN, out: OUT, source: 1000k, level: 1 V }
            """
        );

    /// <summary>From a source of a megohm the volts are the impedance, within what a megohm is not infinity.</summary>
    [Theory]
    [InlineData("reverb coil 2250ohm 1kHz 200ohm IN -> GND", 1000, 2250)]
    [InlineData("reverb coil 600 ohm 100 ohm IN -> GND", 1000, 600)]
    [InlineData("{is: coil, impedance: 2250 ohm, frequency: 1 kHz, ohms: 200, between: [IN, GND]}", 1000, 2250)]
    public void Shows_its_impedance_at_its_frequency(string coil, double hertz, double ohms)
    {
        var volts = With(coil).Volts(FormattableString.Invariant($"IN {hertz}Hz"));
        Assert.Equal(ohms * 1e-6, volts, 0.01 * ohms * 1e-6);
    }

    [Fact]
    public void What_is_not_said_is_assumed()
    {
        var sheet = With("reverb coil 8 ohm IN -> GND").Sheet;
        var part = sheet.Parts.OfType<InductorPart>().Single();
        Assert.Equal(0.8, part.CopperOhms, 1e-9);
        Assert.Equal(Math.Sqrt(64 - 0.64) / (2 * Math.PI * 1000), part.Henries, 1e-9);
        Assert.Equal(2, sheet.Assumptions.Count(a => a.Subject == "TK1" && a.What != "tolerance"));
    }
}
