using Xunit;

namespace Slowglow.Tests.Circuits.Regulators;

/// <summary>Adjustable regulators: 1.25 V (1 + R2 / R1) + 50 uA R2, LM317 and LM337 data sheets, from memory.</summary>
public sealed class AdjustableTests
{
    [Theory]
    [InlineData("1k5", 1500)]
    [InlineData("2k4", 2400)]
    public void The_positive_one_holds_what_its_resistors_say(string lower, double ohms)
    {
        var bench = HighTension.Of(
            25,
            $"  U1: LM317 in=HT adj=A out=OUT\n  R1: 240 OUT -> A\n  R2: {lower} A -> GND\n  R3: 470 2W OUT -> GND\n  C2: 10u 35V OUT -> GND"
        );
        var wanted = (1.25 * (1 + (ohms / 240))) + (50e-6 * ohms);
        Assert.Equal(wanted, bench.Volts("OUT"), 0.02 * wanted);
    }

    /// <summary>The rail turned round: its positive side is chassis.</summary>
    [Fact]
    public void The_negative_one_is_its_mirror()
    {
        var bench = SheetOnBench.From(
            """
            sheet: 1
            unit: Test bed
            mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
            parts:
              T1:
                is: transformer 50 VA
                windings:
                  P: { pins: 1-2, volts: 230 V, ohms: 5 }
                  S: { pins: 3-4, volts: 18 V, ohms: 0.5 }
              W1: wire MAINS.L -> T1.1
              W2: wire MAINS.N -> T1.2
              D1: 1N4007 T1.3 -> GND
              D2: 1N4007 T1.4 -> GND
              D3: 1N4007 RAW -> T1.3
              D4: 1N4007 RAW -> T1.4
              C1: 2200u 35V GND -> RAW
              U1: LM337 in=RAW adj=A out=OUT
              R1: 120 A -> OUT
              R2: 1k2 GND -> A
              R3: 470 2W GND -> OUT
              C2: 10u 35V GND -> OUT
            """
        );
        var wanted = -((1.25 * (1 + (1200.0 / 120))) + (50e-6 * 1200));
        Assert.Equal(wanted, bench.Volts("OUT"), 0.02 * -wanted);
    }
}
