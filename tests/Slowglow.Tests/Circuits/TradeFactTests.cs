using Slowglow.Circuits;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.Circuits;

/// <summary>Facts every bench knows: common practice, no source.</summary>
public sealed class TradeFactTests
{
    private const string Supply = """
        sheet: 1
        unit: Test bed
        mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
        parts:
          T1:
            is: transformer 20 VA
            windings:
              P: { pins: 1-2, volts: 230 V, ohms: 60 }
              S: { pins: 3-4-5, volts: 18-0-18 V, ohms: 4 }
          W1: wire MAINS.L -> T1.1
          W2: wire MAINS.N -> T1.2
          W3: wire T1.4 -> GND
          D1: 1N4007 T1.3 -> RAWP
          D2: 1N4007 T1.5 -> RAWP
          D3: 1N4007 RAWN -> T1.3
          D4: 1N4007 RAWN -> T1.5
          C1: 2200u 35V RAWP -> GND
          C2: 2200u 35V GND -> RAWN
          U1: { is: L7815, in: RAWP, gnd: GND, out: P15 }
          U2: { is: L7915, in: RAWN, gnd: GND, out: N15 }
          C3: 10u 25V P15 -> GND
          C4: 10u 25V GND -> N15
        """;

    private static SheetOnBench WithSupply(string parts, string signal) =>
        SheetOnBench.From(Supply + "\n" + parts + "\nsignal: " + signal + "\n");

    [Theory]
    [InlineData("5k", "1M", 200)]
    [InlineData("10k", "100k", 10)]
    [InlineData("47k", "22k", 0.468)]
    public void Inverting_stage_has_a_gain_of_rf_over_rin(string input, string feedback, double gain)
    {
        var bench = WithSupply(
            $"""
              U3: TL072 3=GND 2=X 1=OUT 8=P15 4=N15
              R1: {input} IN -> X
              R2: {feedback} X -> OUT
              R3: 100k OUT -> GND
            """,
            "{ in: IN, out: OUT, source: 1, level: 10 mV }"
        );

        // At 200 Hz even the highest of these gains leaves the amplifier ample loop gain.
        Assert.Equal(gain * 0.01, bench.Volts("OUT 200Hz"), 0.02 * gain * 0.01);
    }

    [Fact]
    public void Non_inverting_stage_has_a_gain_of_one_more()
    {
        var bench = WithSupply(
            """
              U3: TL072 3=IN 2=X 1=OUT 8=P15 4=N15
              R4: 1M IN -> GND
              R1: 1k X -> GND
              R2: 22k X -> OUT
            """,
            "{ in: IN, out: OUT, source: 1, level: 10 mV }"
        );
        Assert.Equal(0.23, bench.Volts("OUT 200Hz"), 0.01 * 0.23);
    }

    [Theory]
    [InlineData(230)]
    [InlineData(216)]
    public void Regulated_rails_hold_within_five_percent(double mains)
    {
        var bench = WithSupply("  R1: 300 P15 -> GND\n  R2: 300 N15 -> GND", "{ in: P15, out: P15, source: 1M, level: 1 mV }");
        var setup = new Setup { Name = "bench", MainsVolts = mains };
        Assert.Equal(15, bench.Volts("P15", setup), 0.05 * 15);
        Assert.Equal(-15, bench.Volts("N15", setup), 0.05 * 15);
        Assert.True(bench.Volts("P15 ripple", setup) < 0.01);
    }

    [Fact]
    public void A_starved_regulator_lets_ripple_through()
    {
        var bench = WithSupply("  R1: 60 P15 -> GND\n  R2: 300 N15 -> GND", "{ in: P15, out: P15, source: 1M, level: 1 mV }");
        var dried = new Fault("C1", "", FailureMode.DriedOut, 0.05);
        Assert.True(bench.Volts("P15 ripple", null, dried) > 0.3);
        Assert.True(bench.Volts("N15 ripple", null, dried) < 0.01);
    }

    [Fact]
    public void Three_silicon_drops_each_way_clip_at_about_two_volts()
    {
        var bench = WithSupply(
            """
              U3: TL072 3=GND 2=X 1=OUT 8=P15 4=N15
              R1: 1k IN -> X
              R2: 100k X -> OUT
              D11: 1N4148 X -> A1
              D12: 1N4148 A1 -> A2
              D13: 1N4148 A2 -> OUT
              D14: 1N4148 OUT -> B2
              D15: 1N4148 B2 -> B1
              D16: 1N4148 B1 -> X
            """,
            "{ in: IN, out: OUT, source: 1, level: 20 mV }"
        );
        var solver = new WorldSolver(bench.Circuit);
        var world = solver.Healthy(Setup.Default, "bench");
        var path = bench.Circuit.Fixtures.Paths[0];
        var driven = new SignalFollower(bench.Circuit, solver).Large([(world, 2.0)], path, TestContext.Current.CancellationToken)[
            0
        ];

        // A sine squared off at v has a fundamental of up to 4/pi v crest, 0.9 v rms.
        Assert.InRange(driven.Volts / 0.9, 1.8, 2.1);
        Assert.True(driven.Distortion > 0.2);
    }

    [Fact]
    public void An_unloaded_rail_reads_in_proportion_at_part_mains()
    {
        var bench = SheetOnBench.From(
            """
            sheet: 1
            unit: Test bed
            mains: { volts: 240 V, frequency: 50 Hz, tolerance: 6 % }
            parts:
              T1:
                is: transformer 60 VA
                windings:
                  P: { pins: 1-2, volts: 240 V, ohms: 30 }
                  S: { pins: 3-4, volts: 198 V, ohms: 60 }
              W1: wire MAINS.L -> T1.1
              W2: wire MAINS.N -> T1.2
              D1: 1N4007 T1.3 -> HT
              D2: 1N4007 T1.4 -> HT
              D3: 1N4007 GND -> T1.3
              D4: 1N4007 GND -> T1.4
              C1: 47u 450V HT -> GND
              R1: 1M HT -> GND
            """
        );
        var full = bench.Volts("HT");
        Assert.InRange(full, 276, 280);
        Assert.InRange(bench.Volts("HT", new Setup { Name = "slow", MainsVolts = 64 }), 73, 75);
    }

    [Fact]
    public void Two_primaries_in_series_take_twice_the_mains()
    {
        const string Common = """
            sheet: 1
            unit: Test bed
            mains: { volts: VOLTS V, frequency: 60 Hz, tolerance: 6 % }
            parts:
              T1:
                is: transformer 30 VA
                windings:
                  P1: { pins: 1-2, volts: 120 V, ohms: 20 }
                  P2: { pins: 3-4, volts: 120 V, ohms: 20 }
                  S: { pins: 5-6, volts: 12 V, ohms: 0.5 }
              W3: wire T1.6 -> GND
              R1: 1k T1.5 -> GND

            """;
        var series =
            Common.Replace("VOLTS", "240", StringComparison.Ordinal)
            + "  W1: wire MAINS.L -> T1.1\n  W2: wire T1.2 -> T1.3\n  W4: wire MAINS.N -> T1.4\n";
        var parallel =
            Common.Replace("VOLTS", "120", StringComparison.Ordinal)
            + "  W1: wire MAINS.L -> T1.1\n  W2: wire T1.1 -> T1.3\n  W4: wire MAINS.N -> T1.2\n  W5: wire T1.2 -> T1.4\n";
        var one = SheetOnBench.From(series).Volts("T1.5 ac");
        var other = SheetOnBench.From(parallel).Volts("T1.5 ac");
        Assert.Equal(one, other, 0.01 * one);
        Assert.Equal(12, one, 0.6);
    }

    [Theory]
    [InlineData(200)]
    [InlineData(250)]
    [InlineData(300)]
    public void A_12AX7_stage_biases_sensibly_and_draws_about_a_milliampere(double supply)
    {
        var bench = SheetOnBench.From(
            $$"""
            sheet: 1
            unit: Test bed
            mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
            parts:
              T1:
                is: transformer 40 VA
                windings:
                  P: { pins: 1-2, volts: 230 V, ohms: 30 }
                  S: { pins: 3-4, volts: {{supply / 1.39:F0}} V, ohms: 60 }
              W1: wire MAINS.L -> T1.1
              W2: wire MAINS.N -> T1.2
              D1: 1N4007 T1.3 -> HT
              D2: 1N4007 T1.4 -> HT
              D3: 1N4007 GND -> T1.3
              D4: 1N4007 GND -> T1.4
              C1: 47u 450V HT -> GND
              V1: 12AX7
              R1: 1M V1.2 -> GND
              R2: 1k5 V1.3 -> GND
              C2: 25u 25V V1.3 -> GND
              R3: 100k HT -> V1.1
            """
        );
        var ht = bench.Volts("HT");
        Assert.Equal(supply, ht, 0.05 * supply);
        var amps = bench.Volts("V1.3") / 1500;
        Assert.InRange(amps, 0.5e-3, 1.4e-3);
        Assert.InRange(bench.Volts("V1.1") / ht, 0.5, 0.85);
    }
}
