using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Power.Limiter;

/// <summary>Which limiter lamp suits a unit: bright enough to tell a short, weak enough not to starve it.</summary>
/// <param name="worlds">The unit.</param>
/// <param name="rails">Its supply rails, first the one that matters most.</param>
public sealed class LampQuestion(Worlds worlds, IReadOnlyList<string> rails)
{
    /// <summary>Lamps to be had, single or side by side.</summary>
    public static IReadOnlyList<double> Offered { get; } = [15, 25, 40, 60, 100, 150, 200, 300];

    private double Mains => worlds.Circuit.Sheet.Mains.Volts;

    /// <summary>All lamps offered, small to large.</summary>
    public IReadOnlyList<LampChoice> Ask(CancellationToken cancel = default)
    {
        var all = new LampChoice[Offered.Count];
        Parallel.For(0, all.Length, new ParallelOptions { CancellationToken = cancel }, k => all[k] = Of(Offered[k], cancel));
        return all;
    }

    /// <summary>The smallest that suits; else the one that tells a short and feeds most; null when none tells one.</summary>
    public static LampChoice? Best(IReadOnlyList<LampChoice> choices) =>
        choices.FirstOrDefault(c => c.Suits) ?? choices.Where(c => c.TellsShort).MaxBy(c => c.RailShare);

    /// <summary>One lamp.</summary>
    public LampChoice Of(double watts, CancellationToken cancel = default)
    {
        var lamp = new TungstenLamp(watts, Mains);
        var behind = Setup.Default with { Name = "limiter", LimiterWatts = watts };
        IReadOnlyList<Fault>[] sets =
        [
            [],
            .. SupplyFaults.DeadShorts(worlds.Circuit, rails).Select(f => (IReadOnlyList<Fault>)[f]),
        ];
        var amps = Inlet(behind, sets, cancel);
        var healthy = lamp.VoltsAt(amps[0]);
        var shorted = amps.Skip(1).Where(double.IsFinite).DefaultIfEmpty(0).Max(lamp.VoltsAt);
        var rail = Rail(behind, cancel) / Rail(Setup.Default, cancel);
        return new(
            watts,
            lamp.Watts(healthy) / watts,
            lamp.Light(healthy),
            lamp.Watts(shorted) / watts,
            lamp.Light(shorted),
            rail
        );
    }

    private double[] Inlet(Setup setup, IReadOnlyList<Fault>[] sets, CancellationToken cancel)
    {
        var probe = new Probe(Probe.Inlet, Probe.Inlet, Probe.Inlet, ProbeKind.Ac);
        return
        [
            .. worlds
                .Ask(setup, sets, [probe], MeterClass.Handheld, cancel: cancel)
                .Select(a => a[0].HasValue ? a[0].Value : double.NaN),
        ];
    }

    private double Rail(Setup setup, CancellationToken cancel)
    {
        if (rails.Count == 0)
        {
            return double.NaN;
        }

        var probe = new Probe(rails[0], rails[0], NetTable.Ground, ProbeKind.Dc);
        var answer = worlds.Ask(
            setup,
            [
                [],
            ],
            [probe],
            MeterClass.Handheld,
            cancel: cancel
        )[0][0];
        return answer.HasValue ? answer.Value : double.NaN;
    }
}
