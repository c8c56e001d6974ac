using Slowglow.Circuits;
using Slowglow.Power.Limiter;
using Slowglow.Sheets;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Power.PowerUp;

/// <summary>Plans the first power-up: every figure is asked of the healthy world as the bench then stands, every sign of a failed one.</summary>
/// <param name="worlds">The unit.</param>
/// <param name="rails">Its supply rails.</param>
public sealed class PowerUpQuestion(Worlds worlds, IReadOnlyList<string> rails)
{
    /// <summary>Edges of a band, standard deviations, and what a handheld meter adds.</summary>
    private const double Edge = 2;
    private const double MeterShare = 0.015;
    private readonly Sheet sheet = worlds.Circuit.Sheet;

    private bool HasValves => sheet.Parts.OfType<ValvePart>().Any(v => v.Device.Kind != DeviceKind.RectifierValve);

    /// <param name="lampWatts">Lamp to use; null = the one that suits.</param>
    /// <param name="valvesOut">Start with the valves pulled, where there are any.</param>
    /// <param name="cancel">Stops it.</param>
    public PowerUpPlan Ask(double? lampWatts, bool valvesOut, CancellationToken cancel = default)
    {
        var question = new LampQuestion(worlds, rails);
        var lamps = lampWatts is { } said ? [question.Of(said, cancel)] : question.Ask(cancel);
        var lamp = LampQuestion.Best(lamps) ?? lamps[^1];
        (string Title, string Do, Setup Setup)[] steps = [.. new StepList(sheet, lamp.Watts, valvesOut && HasValves).All];
        // Steps, rails and ramp know nothing of each other: all cores at once.
        var planned = new PowerUpStep[steps.Length];
        IReadOnlyList<RailAlive> regulated = [];
        IReadOnlyList<string> reforming = [];
        Action[] all =
        [
            .. steps.Select((s, k) => (Action)(() => planned[k] = Step(s.Title, s.Do, s.Setup, lamp.Watts, cancel))),
            () => regulated = new RegulatedRails(worlds).Ask(cancel),
            () => reforming = ReformingRamp.Of(worlds, rails, cancel),
        ];
        Parallel.Invoke(new ParallelOptions { CancellationToken = cancel }, all);
        return new(lamp, lamps, planned, regulated, reforming);
    }

    private PowerUpStep Step(string title, string what, Setup setup, double lampWatts, CancellationToken cancel)
    {
        var probes = Probes(setup);
        var healthy = worlds.Ask(
            setup,
            [
                [],
            ],
            probes,
            MeterClass.Handheld,
            cancel: cancel
        )[0];
        PowerPoint[] points = [.. probes.Zip(healthy, Point)];
        var faults = SupplyFaults.Hard(worlds.Circuit, rails);
        var failed = worlds.Ask(
            setup,
            [.. faults.Select(f => (IReadOnlyList<Fault>)[f])],
            probes,
            MeterClass.Handheld,
            cancel: cancel
        );
        var signs = StepSigns.Of(points, faults.Zip(failed), setup.LimiterWatts is not null);
        var inlet = setup.PowerOff ? double.NaN : points.First(p => p.Probe.IsInlet).Nominal;
        var lamp = new TungstenLamp(lampWatts, sheet.Mains.Volts);
        var across = setup.LimiterWatts is null || !double.IsFinite(inlet) ? double.NaN : lamp.VoltsAt(inlet);
        var share = double.IsNaN(across) ? double.NaN : lamp.Watts(across) / lampWatts;
        return new(
            title,
            what,
            setup,
            points,
            share,
            double.IsNaN(across) ? double.NaN : lamp.Light(across),
            Stop(points, failed),
            signs
        );
    }

    /// <summary>Half way, by ratio, from the most that a healthy unit draws to the least that a shorted one does.</summary>
    private static double Stop(PowerPoint[] points, IReadOnlyList<Answer[]> failed)
    {
        var at = Array.FindIndex(points, p => p.Probe.IsInlet);
        if (at < 0 || !double.IsFinite(points[at].High))
        {
            return double.NaN;
        }

        var high = points[at].High;
        var shorted = failed
            .Where(f => f[at].HasValue && f[at].Value > 1.5 * high)
            .Select(f => f[at].Value)
            .DefaultIfEmpty(4 * high)
            .Min();
        return Math.Sqrt(high * shorted);
    }

    private Probe[] Probes(Setup setup)
    {
        if (setup.PowerOff)
        {
            var ohms = rails.Select(r => new Probe(r, r, NetTable.Ground, ProbeKind.Ohm));
            return
            [
                new(
                    $"{NetTable.Live} - {NetTable.Neutral}",
                    sheet.Nets.Find(NetTable.Live)!,
                    sheet.Nets.Find(NetTable.Neutral)!,
                    ProbeKind.Ohm
                ),
                .. ohms,
            ];
        }

        var outputs = sheet.Signals.Select(s => s.Out).Distinct().Select(o => new Probe(o, o, NetTable.Ground, ProbeKind.Dc));
        return
        [
            new(Probe.Inlet, Probe.Inlet, Probe.Inlet, ProbeKind.Ac),
            .. rails.Select(r => new Probe(r, r, NetTable.Ground, ProbeKind.Dc)),
            .. outputs,
        ];
    }

    private static PowerPoint Point(Probe probe, Answer answer)
    {
        if (!answer.HasValue)
        {
            return new(probe, double.NaN, double.NaN, double.NaN);
        }

        var meter =
            (MeterShare * Math.Abs(answer.Value))
            + (
                probe.IsInlet ? 1e-3
                : probe.Kind == ProbeKind.Ohm ? 0.3
                : 0.02
            );
        var edge = Edge * Math.Sqrt((answer.Sigma * answer.Sigma) + (meter * meter));
        var (low, high) = (answer.Value - edge, answer.Value + edge);
        if (probe.Kind is ProbeKind.Ohm or ProbeKind.Ac)
        {
            // Where the meter nearly turns a junction on, its ohms tell nothing.
            var certain = probe.Kind == ProbeKind.Ac || edge < answer.Value / 2;
            (low, high) = (certain ? Math.Max(low, 0) : 0, certain ? high : double.PositiveInfinity);
        }

        return new(probe, answer.Value, low, high);
    }
}
