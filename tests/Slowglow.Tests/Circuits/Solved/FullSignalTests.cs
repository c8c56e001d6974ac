using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Tests.Diagnosis;

namespace Slowglow.Tests.Circuits.Solved;

/// <summary>What a unit stands when it is driven to its clean limit.</summary>
public class FullSignalTests
{
    private const double Load = 8;

    private static FullSignal Amplifier() =>
        DemoUnits
            .Of("heronsgate-m60")
            .Worlds.World(Setup.Default, [], TestContext.Current.CancellationToken)
            .FullSignal(null, TestContext.Current.CancellationToken)
        ?? throw new InvalidOperationException("The monitor amplifier passes no clean signal.");

    /// <summary>Ideal class B: each rail delivers crest amperes over pi (any textbook of power amplifiers; here with the driver stages' current on top).</summary>
    [Fact]
    public void A_class_b_stage_draws_its_crest_over_pi_from_each_rail()
    {
        var full = Amplifier();
        var ideal = Math.Sqrt(2) * full.Limit.OutputVolts / (Math.PI * Load);
        Assert.Equal(2, full.Rails.Count);
        Assert.All(full.Rails, r => Assert.InRange(Math.Abs(r.Amps), 0.97 * ideal, 1.1 * ideal));
    }

    /// <summary>What the rails deliver is heat in the parts or power in the load: conservation of energy.</summary>
    [Fact]
    public void What_the_rails_deliver_is_heat_or_output()
    {
        var full = Amplifier();
        var delivered = full.Rails.Sum(r => r.Volts * r.Amps);
        string[] pair = ["Q12", "Q13", "R23", "R24"];
        var heat = full.Parts.Where(p => pair.Contains(p.Part)).Sum(p => p.Watts);
        var loudspeaker = full.Parts.Single(p => p.Part == "LS1").Watts;
        Assert.True(heat > 0.2 * delivered);
        Assert.InRange(loudspeaker + heat, 0.9 * delivered, delivered);
    }

    [Fact]
    public void Rails_sag_under_the_signal()
    {
        var worlds = DemoUnits.Of("heronsgate-m60").Worlds;
        var full = Amplifier();
        var quiet = worlds.Ask(
            Setup.Default,
            [
                [],
            ],
            [.. full.Rails.Select(r => new Probe(r.Net, r.Net, NetTable.Ground, ProbeKind.Dc))],
            MeterClass.Handheld,
            cancel: TestContext.Current.CancellationToken
        )[0];
        Assert.All(full.Rails.Zip(quiet), r => Assert.True(Math.Abs(r.First.Volts) < 0.97 * Math.Abs(r.Second.Value)));
        Assert.True(full.Limit.OutputVolts < worlds.CleanLimit(Setup.Default, []).OutputVolts);
    }

    [Fact]
    public void A_unit_that_passes_nothing_has_no_full_signal()
    {
        var worlds = DemoUnits.Of("heronsgate-m60").Worlds;
        Assert.Null(
            worlds
                .World(Setup.Cold, [], TestContext.Current.CancellationToken)
                .FullSignal(null, TestContext.Current.CancellationToken)
        );
    }
}
