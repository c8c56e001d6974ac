using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Xunit;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>
/// Figures of a power-up against the reference solver, at part and full mains, limiter in and out: rails (nets with a reservoir) within 3 %
/// and a floor of 20 mV, inlet current within 10 %, volts at the inlet within 1 %. The reference is given the lamp as
/// the resistance that it settles at in our world.
/// </summary>
public sealed class PowerUpAgreementTests
{
    private const double RailBound = 0.03;
    private const double Floor = 0.02;
    private const double InletBound = 0.01;
    private const double CurrentBound = 0.1;
    private const double CurrentFloor = 1e-4;

    [Theory]
    [InlineData("saltmarsh-lm2", 0.25, 0)]
    [InlineData("saltmarsh-lm2", 0.25, 60)]
    [InlineData("saltmarsh-lm2", 0.5, 0)]
    [InlineData("saltmarsh-lm2", 0.5, 60)]
    [InlineData("saltmarsh-lm2", 0.75, 0)]
    [InlineData("saltmarsh-lm2", 0.75, 60)]
    [InlineData("saltmarsh-lm2", 1, 0)]
    [InlineData("saltmarsh-lm2", 1, 60)]
    [InlineData("heronsgate-m60", 0.25, 0)]
    [InlineData("heronsgate-m60", 0.25, 100)]
    [InlineData("heronsgate-m60", 0.5, 0)]
    [InlineData("heronsgate-m60", 0.5, 100)]
    [InlineData("heronsgate-m60", 0.75, 0)]
    [InlineData("heronsgate-m60", 0.75, 100)]
    [InlineData("heronsgate-m60", 1, 0)]
    [InlineData("heronsgate-m60", 1, 100)]
    [InlineData("kittiwake-15", 0.25, 0)]
    [InlineData("kittiwake-15", 0.25, 100)]
    [InlineData("kittiwake-15", 0.5, 0)]
    [InlineData("kittiwake-15", 0.5, 100)]
    [InlineData("kittiwake-15", 0.75, 0)]
    [InlineData("kittiwake-15", 0.75, 100)]
    [InlineData("kittiwake-15", 1, 0)]
    [InlineData("kittiwake-15", 1, 100)]
    public void Rails_and_inlet_agree_with_the_reference(string folder, double share, double lampWatts)
    {
        var cancel = TestContext.Current.CancellationToken;
        var circuit = Circuit.From(DemoSheets.Read(folder)).Value!;
        var mains = circuit.Sheet.Mains.Volts;
        var setup = Setup.Default with
        {
            Name = "power-up",
            MainsVolts = share * mains,
            LimiterWatts = lampWatts > 0 ? lampWatts : null,
        };
        var worlds = new Worlds(circuit);
        var meter = MeterClass.Handheld with { InputOhms = 1e15 };
        string[] nets = [.. circuit.Sheet.Nets.Names.Where(n => n != NetTable.Ground)];
        Probe[] probes =
        [
            new(Probe.Inlet, Probe.Inlet, Probe.Inlet, ProbeKind.Ac),
            .. nets.Select(n => new Probe(n, n, NetTable.Ground, ProbeKind.Dc)),
            .. nets.Select(n => new Probe(n, n, NetTable.Ground, ProbeKind.Ac)),
        ];
        var answers = worlds.Ask(
            setup,
            [
                [],
            ],
            probes,
            meter,
            cancel: cancel
        )[0];
        var ours = nets.Select((n, k) => (n, answers[k + 1]))
            .Where(n => n.Item2.HasValue)
            .ToDictionary(n => n.n, n => n.Item2.Value);
        var ripple = nets.Select((n, k) => (n, answers[k + 1 + nets.Length]))
            .ToDictionary(n => n.n, n => n.Item2.HasValue ? n.Item2.Value : 0);

        var lamp = new TungstenLamp(Math.Max(lampWatts, 1), mains);
        var lampOhms = lampWatts > 0 ? lamp.Ohms(lamp.VoltsAt(answers[0].Value)) : 0;
        var warmth = HeaterWarmth.Of(
            worlds,
            [
                [],
            ],
            cancel,
            setup
        )[0];
        var reference = new SteadyState(
            new ReferenceCircuit(circuit.Sheet, setup, [], warmth, lampOhms: lampOhms),
            branches: ["vmains"]
        );
        Assert.True(reference.SettleFrom(ours, net => ripple.GetValueOrDefault(net)), reference.Restless);

        foreach (var rail in Reservoirs(circuit.Sheet).Where(ours.ContainsKey))
        {
            var theirs = reference.Figures[rail].Mean;
            Assert.True(
                Math.Abs(ours[rail] - theirs) <= Floor + (RailBound * Math.Abs(theirs)),
                $"{rail}: {ours[rail]} V, reference {theirs} V"
            );
        }

        var inlet = reference.Currents["vmains"].Ripple;
        Assert.Equal(inlet, answers[0].Value, CurrentFloor + (CurrentBound * inlet));
        var live = circuit.Sheet.Nets.Find(NetTable.Live)!;
        Assert.Equal(reference.Figures[live].Ripple, ripple[live], InletBound * reference.Figures[live].Ripple);
    }

    private static IEnumerable<string> Reservoirs(Sheet sheet) =>
        sheet
            .Parts.OfType<CapacitorPart>()
            .Where(c => c.Farads >= 9e-6 && c.Pins.Any(p => p.Net == NetTable.Ground))
            .SelectMany(c => c.Pins)
            .Select(p => p.Net)
            .Where(n => n != NetTable.Ground)
            .Distinct();
}
