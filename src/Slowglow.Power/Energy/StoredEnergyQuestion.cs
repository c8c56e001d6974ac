using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Power.Energy;

/// <summary>
/// What the reservoirs of a unit hold after switch-off. Volts are those of the unit running or with its valves pulled, whichever is more; the
/// way down is that of the unpowered network, in which valves are taken as cold and junctions as they stand while the unit
/// runs: rectifiers block.
/// </summary>
/// <param name="worlds">The unit.</param>
public sealed class StoredEnergyQuestion(Worlds worlds)
{
    /// <summary>Smaller ones hold too little to matter beside the reservoirs (common practice, no source).</summary>
    private const double SmallestFarads = 0.9e-6;

    /// <summary>Below this nothing is stored that hurts, and no caution is needed.</summary>
    private const double LeastVolts = 12;
    private static readonly double[] Limits = [SafeVolts.Dc, SafeVolts.Low];

    private Sheet Sheet => worlds.Circuit.Sheet;

    /// <summary>Fullest first. <paramref name="faults"/> stand in the unit throughout: a leaky bleeder, an open one.</summary>
    public IReadOnlyList<StoredCharge> Ask(IReadOnlyList<Fault> faults, CancellationToken cancel = default)
    {
        CapacitorPart[] all = [.. Sheet.Parts.OfType<CapacitorPart>().Where(c => c.Farads >= SmallestFarads)];
        var volts = Volts(all, faults, cancel);
        var times = Times(all, volts, faults, cancel);
        if (times is null)
        {
            return [];
        }

        var without = Dischargers(all, faults)
            .Select(r => (r, Times: Times(all, volts, [.. faults, new Fault(r, "", FailureMode.Open)], cancel)))
            .ToArray();
        return
        [
            .. Enumerable
                .Range(0, all.Length)
                .Where(k => volts[k] >= LeastVolts)
                .Select(k => One(all[k], volts[k], times, without, k))
                .OrderByDescending(s => s.Joules),
        ];
    }

    private static StoredCharge One(
        CapacitorPart part,
        double volts,
        double[,] times,
        (string Part, double[,]? Times)[] without,
        int k
    )
    {
        var limit = volts > SafeVolts.Dc ? 0 : 1;
        string? worst = null;
        var longest = times[k, limit];
        foreach (var (resistor, open) in without)
        {
            if (open is not null && open[k, limit] > longest * 1.05)
            {
                (worst, longest) = (resistor, open[k, limit]);
            }
        }

        var joules = part.Farads * volts * volts / 2;
        return new(
            part.Designator,
            volts,
            joules,
            times[k, 0],
            times[k, 1],
            worst,
            longest,
            DischargeResistor.For(volts, part.Farads)
        );
    }

    private double[] Volts(CapacitorPart[] all, IReadOnlyList<Fault> faults, CancellationToken cancel)
    {
        Probe[] probes = [.. all.Select(c => new Probe(c.Designator, c.Pins[0].Net, c.Pins[1].Net, ProbeKind.Dc))];
        double[] Dc(Setup setup) =>
            [
                .. worlds
                    .Ask(setup, [faults], probes, MeterClass.Handheld, cancel: cancel)[0]
                    .Select(a => a.HasValue ? Math.Abs(a.Value) : 0),
            ];
        var pulled = Setup.Default with { Name = "valves out", ValvesOut = true };
        return [.. Dc(Setup.Default).Zip(Dc(pulled), Math.Max)];
    }

    private double[,]? Times(CapacitorPart[] all, double[] volts, IReadOnlyList<Fault> faults, CancellationToken cancel)
    {
        var ohms = worlds
            .World(Setup.Cold, faults, cancel)
            .PortResistance([.. all.Select(c => c.Designator)], worlds.World(Setup.Default, [], cancel));
        return ohms is null ? null : new Decay(ohms, [.. all.Select(c => c.Farads)]).Times(volts, Limits);
    }

    /// <summary>Resistors at a net of such a capacitor.</summary>
    private IEnumerable<string> Dischargers(CapacitorPart[] all, IReadOnlyList<Fault> faults)
    {
        var nets = all.SelectMany(c => c.Pins).Select(p => p.Net).Where(n => n != NetTable.Ground).ToHashSet();
        return Sheet
            .Parts.OfType<ResistorPart>()
            .Where(r => r.Pins.Any(p => nets.Contains(p.Net)))
            .Select(r => r.Designator)
            .Where(r => faults.All(f => f.Part != r));
    }
}
