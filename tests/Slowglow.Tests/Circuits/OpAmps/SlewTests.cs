using Slowglow.Circuits;

namespace Slowglow.Tests.Circuits.OpAmps;

/// <summary>Slew rate: a sine of V volts peak at f needs 2 pi f V volts a second (calculus; every op-amp handbook's "full-power bandwidth").</summary>
public sealed class SlewTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    private static SheetOnBench Follower(string type, string devices = "") =>
        Beds.Build(
            Beds.Rails15,
            $"  U3: {type} 3=IN 2=OUT 6=OUT 7=P15 4=N15\n  R1: 100k IN -> GND\n  R2: 10k OUT -> GND{devices}",
            "{ in: IN, out: OUT, source: 600, level: 100 mV }"
        );

    /// <summary>A 741 (0.5 V/us, from memory of the data sheet) with 13 V peak: 6 kHz, common practice.</summary>
    [Fact]
    public void A_741_gives_its_full_output_up_to_a_few_kilohertz()
    {
        var bench = Follower("741");
        var full = bench.World().FullOutput(cancel: Cancel)!;
        Assert.Equal("U3", full.Part);
        Assert.Equal(0.5e6 / (2 * Math.PI * Math.Sqrt(2) * full.OutputVolts), full.Hertz, 0.01 * full.Hertz);
        Assert.InRange(full.Hertz, 5e3, 8e3);
    }

    [Fact]
    public void Beyond_that_the_headroom_falls_as_one_over_f()
    {
        var points = Follower("741").World().Headroom([1e3, 10e3, 20e3], cancel: Cancel);
        Assert.Null(points[0].Slews);
        Assert.Equal("U3", points[1].Slews);
        Assert.Equal(0.5e6 / (2 * Math.PI * 20e3 * Math.Sqrt(2)), points[2].OutputVolts, 0.01 * points[2].OutputVolts);
        Assert.Equal(2, points[1].OutputVolts / points[2].OutputVolts, 0.01);
    }

    /// <summary>TL071, 13 V/us: beyond hearing.</summary>
    [Fact]
    public void A_field_effect_op_amp_has_it_beyond_20_kHz()
    {
        var world = Follower("TL071").World();
        Assert.InRange(world.FullOutput(cancel: Cancel)!.Hertz, 100e3, 250e3);
        Assert.All(world.Headroom([20, 1e3, 20e3], cancel: Cancel), p => Assert.Null(p.Slews));
    }

    [Fact]
    public void One_too_slow_for_1_kHz_is_named_first_of_what_clips()
    {
        const string Slow = """

            devices:
              SLOW1:
                like: 741
                law: { slew: 20e3 }
            """;
        var cause = Follower("SLOW1", Slow).World().ClipsFirst(cancel: Cancel)[0];
        Assert.Equal(ClippingKind.Slews, cause.Kind);
        Assert.Equal(20e3 / (2 * Math.PI * 1000 * Math.Sqrt(2)), cause.OutputVolts, 0.01 * cause.OutputVolts);
        Assert.Contains("slew rate", cause.Words, StringComparison.Ordinal);
    }
}
