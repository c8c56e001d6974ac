using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.Circuits;

namespace Slowglow.Tests.Bench.Questions;

/// <summary>The three demo units, asked everything: figures a technician would believe (common practice, no source).</summary>
public sealed class CharacterTests
{
    private static (BenchUnit Unit, ComputeCharacter Question) Of(string demo)
    {
        var unit = BenchUnit.From(DemoText.Of(demo)).Value!;
        return (unit, new ComputeCharacter(unit));
    }

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public void A_small_valve_combo_ends_in_its_output_valves()
    {
        var (_, question) = Of("kittiwake-15");
        var channels = question.Run(Setup.Default, [], Cancel);
        Assert.Equal(["first", "second"], channels.Select(c => c.Channel));
        Assert.All(channels, c => Assert.Contains(c.ClipsFirst[0].Part, new[] { "V4", "V5" }));
        Assert.All(channels, c => Assert.Equal("HT0", c.Hum!.Causes[0].Net));

        // A megohm from each input to ground with the first valve's Miller capacitance across it (100 pF and more: 1.5 M at 1 kHz), and an
        // output impedance well below the loudspeaker's for the feedback.
        Assert.All(channels, c => Assert.InRange(c.Input[0].Ohms, 0.95e6, 1.05e6));
        Assert.All(channels, c => Assert.InRange(c.Input[1].Ohms, 0.8e6, 0.95e6));
        Assert.All(channels, c => Assert.InRange(c.Output[1].Ohms, 0.5, 8));
        Assert.All(channels, c => Assert.Equal(20e3, c.Response!.Points[^1].Hertz));
    }

    [Fact]
    public void A_power_amplifier_is_flat_and_stiff()
    {
        var (_, question) = Of("heronsgate-m60");
        var channel = question.Run(Setup.Default, [], Cancel)[0];
        Assert.All(channel.Response!.Points.Where(p => p.Hertz is >= 20 and <= 20e3), p => Assert.InRange(p.Decibels, -0.5, 0.1));
        Assert.InRange(channel.Output[1].Ohms, 0.01, 0.1);
        Assert.Equal(ClippingKind.Bottomed, channel.ClipsFirst[0].Kind);
        Assert.True(channel.Loop!.PhaseMarginDegrees > 45);

        var concerns = question.Concerns(Setup.Default, [], Cancel);
        Assert.True(concerns.Stands);
        Assert.Empty(concerns.OtherStates);
        Assert.Contains(concerns.ThermalLoops, t => t.Parts.Order().SequenceEqual(["Q12", "Q13"]));
        Assert.DoesNotContain(concerns.ThermalLoops, t => t.RunsAway);
    }

    [Fact]
    public void A_line_mixer_clips_at_an_op_amp_and_is_quiet()
    {
        var (_, question) = Of("saltmarsh-lm2");
        var channel = question.Run(Setup.Default, [], Cancel)[0];
        Assert.True(channel.ClipsFirst[0].Kind is ClippingKind.PositiveLimit or ClippingKind.NegativeLimit);
        Assert.InRange(channel.Noise!.SignalToNoiseDecibels, 90, 110);
        Assert.Equal(47, channel.Output[1].Ohms, 0.5);
        Assert.Empty(ConcernWords.Say(question.Concerns(Setup.Default, [], Cancel)));
    }

    [Fact]
    public void A_fault_that_cooks_a_part_is_said()
    {
        var (_, question) = Of("kittiwake-15");
        var words = ConcernWords.Say(question.Concerns(Setup.Default, [new Fault("C2", "", FailureMode.Short)], Cancel));
        Assert.Contains(
            words,
            w => w.StartsWith("R2 turns ", StringComparison.Ordinal) && w.Contains("times its rating", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void A_dried_reservoir_hums_by_its_own_rail()
    {
        var (_, question) = Of("kittiwake-15");
        var healthy = question.Run(Setup.Default, [], Cancel)[0].Hum!;
        var dried = question.Run(Setup.Default, [new Fault("C1", "", FailureMode.DriedOut, 0.05)], Cancel)[0].Hum!;
        Assert.True(dried.Volts > 3 * healthy.Volts);
        Assert.Equal("HT0", dried.Causes[0].Net);
        Assert.True(dried.TwiceVolts > dried.MainVolts);
    }

    [Fact]
    public void With_the_power_off_nothing_is_said()
    {
        var (_, question) = Of("saltmarsh-lm2");
        Assert.Empty(question.Run(Setup.Cold, [], Cancel));
    }
}
