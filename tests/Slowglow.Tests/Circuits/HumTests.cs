using Slowglow.Circuits;

namespace Slowglow.Tests.Circuits;

/// <summary>Hum by cause.</summary>
public sealed class HumTests
{
    /// <summary>Ohm's law: a tenth of the rail's ripple.</summary>
    [Fact]
    public void A_divider_from_a_rail_passes_a_tenth_of_its_ripple()
    {
        var bench = Beds.Build(
            Beds.HighTension,
            "  R2: 90k RAW -> OUT\n  R3: 10k OUT -> GND\n  R4: 10k 5W RAW -> GND\n  R5: 1M IN -> GND",
            "{ in: IN, out: OUT, source: 600, level: 10 mV }"
        );
        var hum = bench.World().Hum()!;
        Assert.Equal("RAW", hum.Causes[0].Net);
        Assert.Equal(bench.Volts("RAW ripple"), hum.Causes[0].RippleVolts, 1e-6);
        Assert.Equal(0.1 * hum.Causes[0].RippleVolts, hum.Causes[0].OutputVolts, 0.01 * hum.Causes[0].OutputVolts);
        Assert.Equal(hum.Volts, hum.Causes[0].OutputVolts, 0.01 * hum.Volts);

        // Common practice: a full-wave rectifier hums at twice the mains.
        Assert.True(hum.TwiceVolts > 20 * hum.MainVolts);
    }

    [Fact]
    public void What_comes_from_a_winding_is_not_put_down_to_a_rail()
    {
        var bench = Beds.Build(
            Beds.HighTension.Replace(
                "S: { pins: 3-4",
                "H: { pins: 5-6, volts: 6.3 V, amps: 1 A, ohms: 0.2 }\n      S: { pins: 3-4",
                StringComparison.Ordinal
            ),
            "  W3: wire T1.6 -> GND\n  R6: 12 10W T1.5 -> GND\n  R2: 99k T1.5 -> OUT\n  R3: 1k OUT -> GND\n  R5: 1M IN -> GND",
            "{ in: IN, out: OUT, source: 600, level: 10 mV }"
        );
        var hum = bench.World().Hum()!;
        Assert.Equal("", hum.Causes[0].Net);
        Assert.Equal(hum.Volts, hum.Causes[0].OutputVolts, 0.02 * hum.Volts);
        Assert.True(hum.MainVolts > 20 * hum.TwiceVolts);
    }

    /// <summary>
    /// A heater with one end grounded leaks into an unbypassed cathode: the volts at the cathode are those of a divider of the leak and what
    /// the cathode offers (common practice; the divider is Ohm's law).
    /// </summary>
    [Fact]
    public void A_leaky_heater_has_a_line_of_its_own()
    {
        var bench = Beds.Build(
            Beds.HighTension.Replace(
                "S: { pins: 3-4",
                "H: { pins: 5-6, volts: 6.3 V, amps: 1 A, ohms: 0.2 }\n      S: { pins: 3-4",
                StringComparison.Ordinal
            ),
            """
              W3: wire T1.6 -> GND
              V1: 12AX7 1=A 2=IN 3=K 4=T1.5 5=T1.5 9=GND
              R2: 1M IN -> GND
              R3: 1k5 K -> GND
              R4: 100k HT -> A
              C4: 1u 400V film A -> OUT
              R5: 1M OUT -> GND
            """,
            "{ in: IN, out: OUT, source: 600, level: 10 mV }"
        );
        Assert.DoesNotContain(bench.World().Hum()!.Causes, c => c.Heater.Length > 0);
        var hum = bench.World(new Fault("V1", "1 h-k", FailureMode.Leaky, 47e3)).Hum()!;
        Assert.Equal("V1", hum.Causes[0].Heater);
        Assert.Equal(6.3, hum.Causes[0].RippleVolts, 0.6);
        Assert.InRange(hum.Causes[0].OutputVolts, 0.9 * hum.Volts, 1.1 * hum.Volts);
        Assert.True(hum.Causes[0].MainVolts > 20 * hum.Causes[0].TwiceVolts);
        Assert.True(hum.Causes.First(c => c.Net == "" && c.Heater == "").OutputVolts < 0.1 * hum.Volts);
    }
}
