using Slowglow.Circuits;

namespace Slowglow.Tests.Circuits;

/// <summary>Loops, further states, heat.</summary>
public sealed class StabilityTests
{
    private const string Signal = "{ in: IN, out: OUT, source: 50, level: 10 mV }";

    private static StabilityMargin Of(SheetOnBench bench, string part) => bench.World().Stability().Single(m => m.Part == part);

    /// <summary>A follower with its second pole at 1.7 times its gain-bandwidth: 60 degrees and more (the stated figure, any textbook).</summary>
    [Fact]
    public void A_voltage_follower_keeps_about_60_degrees()
    {
        var bench = Beds.Build(
            Beds.Rails15,
            "  U3: TL072 3=IN 2=OUT 1=OUT 8=P15 4=N15\n  R1: 100k IN -> GND\n  R2: 10k OUT -> GND",
            Signal
        );
        var margin = Of(bench, "U3");
        Assert.InRange(margin.PhaseMarginDegrees, 55, 68);
        Assert.InRange(margin.CrossoverHertz, 2e6, 3.2e6);
        Assert.Equal(106, margin.LoopGainDecibels, 1.0);
        Assert.False(margin.Latches);
    }

    /// <summary>Common practice: a capacitor straight on the output of a follower eats its phase margin.</summary>
    [Fact]
    public void A_capacitive_load_eats_the_margin()
    {
        var bench = Beds.Build(
            Beds.Rails15,
            "  U3: TL072 3=IN 2=OUT 1=OUT 8=P15 4=N15\n  R1: 100k IN -> GND\n  C11: 47n OUT -> GND",
            Signal
        );
        var margin = Of(bench, "U3");
        Assert.InRange(margin.PhaseMarginDegrees, -20, 25);
        Assert.True(margin.SmallestReturnDifference < 0.5);
    }

    /// <summary>Three equal RC sections turn 180 degrees and weaken 29 times (any textbook on the phase-shift oscillator).</summary>
    [Theory]
    [InlineData("100k", true)]
    [InlineData("470k", false)]
    public void A_phase_shift_oscillator_needs_a_gain_of_29(string feedback, bool calm)
    {
        // Inverting gain 10 or 47 on a network that is buffered by its last resistor, the stage's own input.
        var bench = Beds.Build(
            Beds.Rails15,
            $"""
              U3: TL072 3=GND 2=X 1=OUT 8=P15 4=N15
              R1: 10k P3 -> X
              R2: {feedback} X -> OUT
              C11: 10n OUT -> P1
              R3: 10k P1 -> GND
              C12: 10n P1 -> P2
              R4: 10k P2 -> GND
              C13: 10n P2 -> P3
              R5: 1M IN -> GND
            """,
            Signal
        );
        var margin = Of(bench, "U3");
        Assert.Equal(calm, margin.GainMarginDecibels > 0 || margin.PhaseMarginDegrees > 0);
    }

    [Fact]
    public void A_comparator_with_positive_feedback_has_two_states()
    {
        var bench = Beds.Build(
            Beds.Rails15,
            "  U3: TL072 3=Y 2=GND 1=OUT 8=P15 4=N15\n  R1: 10k IN -> Y\n  R2: 100k Y -> OUT\n  R3: 10k IN -> GND",
            "{ in: IN, out: OUT, source: 50, level: 10 mV }"
        );
        var world = bench.World();
        var states = world.OtherStates(TestContext.Current.CancellationToken);
        Assert.NotEmpty(states);
        var highest = states.Max(s => s.Nets.Where(n => n.Net == "OUT").Select(n => n.OtherVolts).DefaultIfEmpty(0).Max());
        var lowest = states.Min(s => s.Nets.Where(n => n.Net == "OUT").Select(n => n.OtherVolts).DefaultIfEmpty(0).Min());
        Assert.True(highest > 12 || lowest < -12);
    }

    [Fact]
    public void Two_transistors_crossed_make_a_flip_flop()
    {
        var bench = Beds.Build(
            Beds.Rails15,
            """
              Q1: 2N3904 c=A b=BA e=GND
              Q2: 2N3904 c=OUT b=BB e=GND
              R1: 10k P15 -> A
              R2: 10k P15 -> OUT
              R3: 47k OUT -> BA
              R4: 47k A -> BB
              R5: 1M IN -> GND
            """,
            Signal
        );
        var world = bench.World();
        var states = world.OtherStates(TestContext.Current.CancellationToken);

        // The even state is a balance; the two that stand have one side low and one high.
        var outs = states.SelectMany(s => s.Nets.Where(n => n.Net == "OUT").Select(n => n.OtherVolts));
        Assert.Contains(outs, v => v is < 0.5 or > 10);
        Assert.True(states.Count == 2 || world.Stands(TestContext.Current.CancellationToken));
    }

    [Fact]
    public void An_ordinary_stage_has_one_state()
    {
        var bench = Beds.Build(
            Beds.Rails15,
            "  U3: TL072 3=GND 2=X 1=OUT 8=P15 4=N15\n  R1: 10k IN -> X\n  R2: 100k X -> OUT",
            Signal
        );
        var world = bench.World();
        Assert.Empty(world.OtherStates(TestContext.Current.CancellationToken));
        Assert.True(world.Stands(TestContext.Current.CancellationToken));
    }

    private static SheetOnBench Follower(string bias, string emitter) =>
        Beds.Build(
            Beds.Rails15,
            $"""
              R1: 2k2 P15 -> HI
              R2: {bias} HI -> LO
              R3: 2k2 LO -> N15
              Q1: TIP35C c=P15 b=HI e=E1
              Q2: TIP36C c=N15 b=LO e=E2
              R4: {emitter} 5W E1 -> OUT
              R5: {emitter} 5W OUT -> E2
              R6: 100 OUT -> GND
              R7: 1M IN -> GND
            """,
            Signal
        );

    /// <summary>Common practice: emitter resistors tame the thermal loop, a stiff bias without them does not.</summary>
    [Fact]
    public void Emitter_resistors_hold_an_output_pair()
    {
        var held = Follower("220", "1").World().ThermalLoops();
        var loose = Follower("220", "R01").World().ThermalLoops();
        Assert.Equal(["Q1", "Q2"], held[0].Parts);
        Assert.True(held[0].WholeGain < loose[0].WholeGain);
        Assert.False(held[0].RunsAway);
    }

    [Fact]
    public void A_resistor_over_its_watts_is_named()
    {
        var bench = Beds.Build(Beds.Rails15, "  R1: 100 0.5W P15 -> GND\n  R2: 100k IN -> OUT\n  R3: 10k OUT -> GND", Signal);
        var over = bench.World().OverRatings();
        Assert.Equal("R1", over[0].Part);
        Assert.Equal(4.5, over[0].Ratio, 0.3);
        Assert.Contains("2.2", over[0].Words, StringComparison.Ordinal);
        Assert.DoesNotContain(over, o => o.Part == "R2");
    }
}
