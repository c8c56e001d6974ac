using Slowglow.Circuits;
using Xunit;

namespace Slowglow.Tests.Circuits.Transformers;

/// <summary>Shorted turns in any winding of a mains transformer, by Ohm's law: a tenth of the turns is ten times the copper across the core.</summary>
public sealed class ShortedTurnsTests
{
    private const string Transformer = """
        sheet: 1
        unit: Test bed
        mains: { volts: 230 V, frequency: 50 Hz, tolerance: 6 % }
        parts:
          T1:
            is: transformer 60 VA
            windings:
              P: { pins: 1-2, volts: 230 V, ohms: 20 }
              HT: { pins: 3-4-5, volts: 200-0-200 V, ohms: 200 }
              LT: { pins: 6-7, volts: 6.3 V, ohms: 0.05 }
          W1: wire MAINS.L -> T1.1
          W2: wire MAINS.N -> T1.2
          W3: wire T1.4 -> GND
          W4: wire T1.7 -> GND
          R1: 1M T1.3 -> GND
          R2: 1M T1.5 -> GND
          R3: 10k T1.6 -> GND

        """;

    private static readonly SheetOnBench Idle = SheetOnBench.From(Transformer);

    [Theory]
    [InlineData("", 200.0)]
    [InlineData("HT", 10 * 200 * 230.0 * 230 / (400 * 400))]
    [InlineData("LT", 10 * 0.05 * 230 * 230 / (6.3 * 6.3))]
    public void Draw_what_the_copper_lets_them(string winding, double ohms)
    {
        var healthy = Idle.Volts("MAINS ac");
        var shorted = Idle.Volts("MAINS ac", null, new Fault("T1", winding, FailureMode.Short));
        var wanted = 230 / (ohms + 20);

        // The magnetising current stands at right angles to it.
        Assert.Equal(Math.Sqrt((wanted * wanted) + (healthy * healthy)), shorted, 0.02 * shorted);
        Assert.True(shorted > 1.5 * healthy);
    }

    [Fact]
    public void Every_winding_can_have_them() =>
        Assert.Equal(
            ["", "HT", "LT"],
            Idle.Circuit.Faults.Where(f => f is { Part: "T1", Mode: FailureMode.Short } && !f.Where.Contains(" to "))
                .Select(f => f.Where)
        );

    /// <summary>A choke with shorted turns lets the mains through: reactance falls tenfold, copper stays.</summary>
    [Fact]
    public void In_a_choke_let_ripple_through()
    {
        var bench = SheetOnBench.From(Transformer + "  L1: 10H 200ohm T1.3 -> X\n  R4: 1k X -> GND\n");
        var shorted = new Fault("L1", "", FailureMode.Drifted, 0.1);
        var before = bench.Volts("X ac") / bench.Volts("T1.3 ac");
        var after = bench.Volts("X ac", null, shorted) / bench.Volts("T1.3 ac", null, shorted);
        var reactance = 2 * Math.PI * 50 * 10;
        Assert.Equal(1000 / Math.Sqrt((1200 * 1200) + (reactance * reactance)), before, 0.01 * before);
        Assert.Equal(1000 / Math.Sqrt((1200 * 1200) + (reactance * reactance / 100)), after, 0.01 * after);
        Assert.Contains(bench.Circuit.Faults, f => f == shorted);
    }
}
