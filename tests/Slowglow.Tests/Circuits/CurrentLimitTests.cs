using Slowglow.Circuits;

namespace Slowglow.Tests.Circuits;

/// <summary>What clips because something gives no more current. Limits are the typical ones of the data sheets, from memory.</summary>
public sealed class CurrentLimitTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>25 mA into 100 ohm: 2.5 V peak at most.</summary>
    [Fact]
    public void An_op_amp_into_a_low_load_gives_all_its_current()
    {
        var bench = Beds.Build(
            Beds.Rails15,
            "  U3: TL072 3=IN 2=OUT 1=OUT 8=P15 4=N15\n  R1: 100k IN -> GND\n  R2: 100 OUT -> GND",
            "{ in: IN, out: OUT, source: 600, level: 100 mV }"
        );
        var cause = bench.World().ClipsFirst(cancel: Cancel)[0];
        Assert.Equal(ClippingKind.CurrentLimit, cause.Kind);
        Assert.Equal("U3", cause.Part);
        Assert.InRange(cause.OutputVolts, 1.2, 2.1);
        Assert.Contains("25 mA", cause.Words, StringComparison.Ordinal);
    }

    /// <summary>A 78L15 (0.1 A) that stands at 60 mA with the follower at rest cannot feed its crest: the rail lets go.</summary>
    [Fact]
    public void A_small_regulator_lets_its_rail_go()
    {
        var bench = Beds.Build(
            Beds.Rails15.Replace("is: L7815", "is: 78L15", StringComparison.Ordinal)
                .Replace("C3: 10u", "C3: 100n", StringComparison.Ordinal),
            """
              Q1: BD139 c=P15 b=B e=E
              R1: 1k P15 -> B
              R2: 1k B -> GND
              C5: 100u bipolar IN -> B
              R3: 68 5W E -> GND
              C6: 1000u 25V E -> OUT
              R4: 68 OUT -> GND
              R5: 100k IN -> GND
            """,
            "{ in: IN, out: OUT, source: 10, level: 100 mV }"
        );
        var causes = bench.World().ClipsFirst(cancel: Cancel);
        Assert.Contains(causes, c => c.Part == "U1" && c.Kind == ClippingKind.CurrentLimit);
    }
}
