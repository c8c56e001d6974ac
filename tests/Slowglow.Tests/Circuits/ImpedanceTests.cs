using Slowglow.Circuits;

namespace Slowglow.Tests.Circuits;

/// <summary>Input and output impedance.</summary>
public sealed class ImpedanceTests
{
    private static readonly double[] OneKilohertz = [1000];

    /// <summary>Common practice: an inverting stage shows its input resistor.</summary>
    [Theory]
    [InlineData("10k", 10e3)]
    [InlineData("47k", 47e3)]
    public void Inverting_stage_shows_its_input_resistor(string input, double ohms)
    {
        var bench = Beds.Build(
            Beds.Rails15,
            $"  U3: TL072 3=GND 2=X 1=OUT 8=P15 4=N15\n  R1: {input} IN -> X\n  R2: 100k X -> OUT",
            "{ in: IN, out: OUT, source: 600, level: 10 mV }"
        );
        var z = bench.World().InputImpedance(OneKilohertz)[0];
        Assert.Equal(ohms, z.Ohms, 0.01 * ohms);
        Assert.Equal(0, z.PhaseDegrees, 2.0);
    }

    /// <summary>Output resistance over one plus the loop gain: 120 ohm over 3 MHz / 1 kHz / 11 is under an ohm.</summary>
    [Fact]
    public void Feedback_lowers_the_output_impedance_of_an_op_amp()
    {
        var bench = Beds.Build(
            Beds.Rails15,
            "  U3: TL072 3=GND 2=X 1=OUT 8=P15 4=N15\n  R1: 10k IN -> X\n  R2: 100k X -> OUT\n  R3: 2k OUT -> GND",
            "{ in: IN, out: OUT, source: 600, level: 10 mV, load: 600 }"
        );
        Assert.InRange(bench.World().OutputImpedance(OneKilohertz)[0].Ohms, 0.05, 1);
    }

    /// <summary>
    /// About 1/gm (any textbook: anode resistance over mu + 1). 12AX7 near 250 V and 1.2 mA: 1.6 mA/V (reference/valve_operating_points.csv),
    /// so 625 ohm; 15 % for spread of the fitted law and for the cathode resistor beside it.
    /// </summary>
    [Fact]
    public void Cathode_follower_has_an_output_impedance_of_1_over_gm()
    {
        var bench = Beds.Build(
            Beds.HighTension,
            """
              V1: 12AX7 1=HT 2=G 3=K
              R2: 1M HT -> G
              R3: 430k G -> GND
              R4: 100k 1W K -> GND
              C3: 100n IN -> G
              C4: 10u 250V film K -> OUT
              R5: 1M OUT -> GND
            """,
            "{ in: IN, out: OUT, source: 600, level: 100 mV }"
        );
        var amps = bench.Volts("V1.k") / 100e3;
        Assert.Equal(1.2e-3, amps, 0.15e-3);
        var z = bench.World().OutputImpedance(OneKilohertz)[0];
        Assert.Equal(625, z.Ohms, 0.15 * 625);
    }

    [Fact]
    public void Output_impedance_leaves_load_and_loudspeaker_out()
    {
        const string Parts = "  R1: 100 IN -> OUT\n  R2: 10M OUT -> GND";
        var bare = Beds.Passive(Parts, "{ in: IN, out: OUT, source: 50, level: 1 V }");
        var loaded = Beds.Passive(
            Parts + "\n  LS1: speaker 8 ohm OUT -> GND",
            "{ in: IN, out: OUT, source: 50, level: 1 V, load: 10 }"
        );
        Assert.Equal(150, bare.World().OutputImpedance(OneKilohertz)[0].Ohms, 0.1);
        Assert.Equal(150, loaded.World().OutputImpedance(OneKilohertz)[0].Ohms, 0.1);
    }

    [Fact]
    public void A_capacitor_shows_its_reactance_and_minus_90_degrees()
    {
        var bench = Beds.Passive("  C1: 100n 10% IN -> OUT\n  R1: 1 OUT -> GND", "{ in: IN, out: OUT, source: 600, level: 1 V }");
        var z = bench.World().InputImpedance(OneKilohertz)[0];
        Assert.Equal(1 / (2 * Math.PI * 1000 * 100e-9), z.Ohms, 2.0);
        Assert.Equal(-90, z.PhaseDegrees, 0.1);
        Assert.Equal(0.05 * z.Ohms, z.SigmaOhms, 0.002 * z.Ohms);
    }
}
