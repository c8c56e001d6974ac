using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Power.Limiter;
using Slowglow.Power.PowerUp;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.Circuits;

namespace Slowglow.Tests.Power;

/// <summary>Lamp limiter behind real circuits, and the plan of a power-up.</summary>
public sealed class PowerUpTests
{
    private static readonly Lazy<BenchUnit> Mixer = new(() => BenchUnit.From(DemoText.Of("saltmarsh-lm2")).Value!);
    private static readonly Lazy<PowerUpPlan> Plan = new(() =>
        new PlanPowerUp(Mixer.Value).Run(60, true, TestContext.Current.CancellationToken).Value!
    );

    private static string[] Raw => ["RAWP", "RAWN"];

    /// <summary>A dead short lights a 60 W 230 V lamp even behind the much copper of a small transformer, the healthy channel hardly warms it.</summary>
    [Fact]
    public void A_short_lights_the_lamp_and_a_healthy_mixer_channel_does_not()
    {
        var lamp = new LampQuestion(Mixer.Value.Worlds, Raw).Of(60, TestContext.Current.CancellationToken);
        Assert.InRange(lamp.HealthyShare, 0, 0.05);
        Assert.InRange(lamp.ShortShare, 0.3, 1.0);
        Assert.True(lamp.ShortLight > 50 * lamp.HealthyLight);
    }

    /// <summary>Behind a transformer of little copper a shorted secondary leaves the lamp nearly all of the mains.</summary>
    [Fact]
    public void A_shorted_secondary_lights_a_sixty_watt_lamp_to_over_80_percent()
    {
        var bench = SheetOnBench.From(DemoText.Of("kittiwake-15"));
        var setup = Setup.Default with { Name = "lamp", LimiterWatts = 60 };
        var amps = bench.Ask("MAINS ac", setup, new Fault("D1", "", FailureMode.Short), new Fault("D3", "", FailureMode.Short));
        var lamp = new TungstenLamp(60, 230);
        Assert.True(lamp.Watts(lamp.VoltsAt(amps.Value)) > 0.8 * 60);
    }

    [Fact]
    public void Steps_go_from_the_cold_chassis_to_full_mains_without_the_lamp()
    {
        var steps = Plan.Value.Steps;
        Assert.True(steps[0].Setup.PowerOff);
        double[] mains = [.. steps.Skip(1).Where(s => s.Setup.LimiterWatts is not null).Select(s => s.Setup.MainsVolts!.Value)];
        Assert.Equal(mains.Order(), mains);
        Assert.Null(steps[^1].Setup.LimiterWatts);
        Assert.Equal(230, steps[^1].Setup.MainsVolts);
        Assert.All(steps.Skip(1), s => Assert.True(s.StopAmps > s.Points[0].High));
    }

    [Fact]
    public void Points_are_those_of_the_healthy_world_at_that_mains_voltage()
    {
        var bench = SheetOnBench.From(DemoText.Of("saltmarsh-lm2"));
        foreach (var step in Plan.Value.Steps.Skip(1))
        {
            var raw = step.Points.Single(p => p.Probe.Where == "RAWP");
            Assert.Equal(bench.Volts("RAWP", step.Setup), raw.Nominal, 0.01 * Math.Abs(raw.Nominal) + 0.01);
            Assert.InRange(raw.Nominal, raw.Low, raw.High);
        }
    }

    [Fact]
    public void A_shorted_reservoir_is_named_where_the_lamp_is_bright_and_the_rail_dead()
    {
        var full = Plan.Value.Steps.Last(s => s.Setup.LimiterWatts is not null);
        var sign = full.Signs.Where(s => s.Looks.Contains("lamp bright", StringComparison.Ordinal)).SelectMany(s => s.Suspects);
        Assert.Contains("C1 short", sign);
    }

    /// <summary>Below dropout a regulated rail follows the mains; it comes alive somewhere below nominal.</summary>
    [Fact]
    public void Regulated_rails_come_alive_below_nominal_mains()
    {
        var plus = Plan.Value.Regulated.Single(r => r.Rail == "P15");
        Assert.Equal(15, plus.Volts, 0.75);
        Assert.InRange(plus.MainsVolts, 100, 225);
        var bench = SheetOnBench.From(DemoText.Of("saltmarsh-lm2"));
        var below = bench.Volts("P15", new() { Name = "below", MainsVolts = plus.MainsVolts - 25 });
        Assert.True(below < 0.95 * plus.Volts);
    }

    [Fact]
    public void A_transformerless_unit_is_not_advised_on()
    {
        var unit = BenchUnit
            .From(
                "sheet: 1\nunit: Bed\nmains: { volts: 230 V, frequency: 50 Hz }\nparts:\n  D1: 1N4007 MAINS.L -> RAW\n  W1: wire MAINS.N -> GND\n  C1: 47u 400V RAW -> GND\n  R1: 10k RAW -> GND\n"
            )
            .Value!;
        var answer = new PlanPowerUp(unit).Run(60, false, TestContext.Current.CancellationToken);
        Assert.Null(answer.Value);
        Assert.Contains("no mains transformer", answer.Findings.Single().Text, StringComparison.Ordinal);
    }
}
