using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Rehearsals;

/// <summary>
/// Half-splitting as it is taught: rails first; then the level halfway along the part of the signal's way that is left; then DC of the stage
/// where it is lost, then ohms of its parts; then the rest of the unit. A rail that is off puts its own surroundings first.
/// </summary>
internal sealed class HalvingChooser : IReadingChooser
{
    private const double NearDb = 3;
    private const double FarSigmas = 4;

    private readonly BenchUnit unit;
    private readonly IReadOnlyList<Probe> live;
    private readonly IReadOnlyList<Probe> cold;
    private readonly Queue<Choice> rails;
    private readonly Setup signalSetup;
    private readonly IReadOnlyList<string> way;
    private int good;
    private int bad;
    private string? lostAt;

    /// <param name="channel">The path that is complained of; null when there is none.</param>
    public HalvingChooser(BenchUnit unit, SignalPath? channel)
    {
        this.unit = unit;
        var offer = new ReadingOffer(unit.Sheet);
        (live, cold) = (offer.In(Setup.Default), offer.In(Setup.Cold));
        rails = new(Rails.Of(unit.Sheet, Setup.Default).Select(DcOf).OfType<Probe>().Select(p => new Choice(p, Setup.Default)));
        var isFirst = channel is null || channel == unit.Sheet.Signals[0];
        signalSetup = isFirst ? Setup.Default : Setup.Default with { Name = channel!.Name, Channel = channel.Name };
        way = channel is null ? [] : SignalChain.Of(unit.Sheet, channel, signalSetup);
        bad = way.Count - 1;
    }

    public Choice? Next(HiddenUnit hidden, DiagnosisResult result, IReadOnlySet<Choice> tried)
    {
        Learn(hidden.Readings.LastOrDefault());
        while (lostAt is null && rails.TryDequeue(out var rail))
        {
            if (!tried.Contains(rail))
            {
                return rail;
            }
        }
        if (lostAt is null && bad - good > 1)
        {
            var net = way[(good + bad) / 2];
            var level = new Probe(net, net, NetTable.Ground, ProbeKind.Level, 1000);
            if (!tried.Contains(new(level, signalSetup)))
            {
                return new(level, signalSetup);
            }
        }
        var around = Around(lostAt ?? (way.Count > 0 ? way[bad] : NetTable.Ground));
        return around.FirstOrDefault(c => !tried.Contains(c));
    }

    private void Learn(Reading? reading)
    {
        if (reading is null || lostAt is not null)
        {
            return;
        }
        if (reading.Probe.Kind == ProbeKind.Level && bad - good > 1 && reading.Probe.Red == way[(good + bad) / 2])
        {
            var healthy = Healthy(reading);
            var isThere = Math.Abs(20 * Math.Log10(Math.Max(Math.Abs(reading.Value), 1e-9) / Math.Abs(healthy.Value))) < NearDb;
            (good, bad) = isThere ? ((good + bad) / 2, bad) : (good, (good + bad) / 2);
        }
        else if (reading.Probe.Kind == ProbeKind.Dc && good == 0 && bad == way.Count - 1)
        {
            var healthy = Healthy(reading);
            var sigma = Math.Sqrt(Math.Pow(healthy.Sigma, 2) + Math.Pow(0.02 * healthy.Value, 2));
            lostAt = Math.Abs(reading.Value - healthy.Value) > FarSigmas * sigma ? reading.Probe.Red : null;
        }
    }

    private Answer Healthy(Reading reading) =>
        unit.Worlds.Ask(reading.Setup, [Array.Empty<Fault>()], [reading.Probe], reading.Meter)[0][0];

    /// <summary>DC nearest first, then ohms nearest first, then further away.</summary>
    private IEnumerable<Choice> Around(string net)
    {
        var steps = Distances(net);
        int Far(Probe p) => Math.Min(steps.GetValueOrDefault(p.Red, 99), steps.GetValueOrDefault(p.Black, 99));
        var near = live.Where(p => p.Kind == ProbeKind.Dc).Select(p => (Choice: new Choice(p, Setup.Default), Far: Far(p)));
        var ohms = cold.Select(p => (Choice: new Choice(p, Setup.Cold), Far: Far(p)));
        return near.Where(c => c.Far <= 1)
            .Concat(ohms.Where(c => c.Far <= 1))
            .Concat(near.Where(c => c.Far > 1))
            .Concat(ohms.Where(c => c.Far > 1))
            .OrderBy(c => c.Far <= 1 ? 0 : c.Far)
            .Select(c => c.Choice);
    }

    /// <summary>Parts between a net and the others; ground leads nowhere.</summary>
    private Dictionary<string, int> Distances(string from)
    {
        var steps = new Dictionary<string, int> { [from] = 0 };
        var queue = new Queue<string>([from]);
        while (queue.TryDequeue(out var net))
        {
            foreach (var part in unit.Sheet.Parts.Where(p => p.Pins.Any(e => e.Net == net)))
            {
                foreach (var next in part.Pins.Select(p => p.Net).Where(n => n != NetTable.Ground && !steps.ContainsKey(n)))
                {
                    steps.Add(next, steps[net] + 1);
                    queue.Enqueue(next);
                }
            }
        }
        return steps;
    }

    private Probe? DcOf(string net) =>
        live.FirstOrDefault(p => p.Kind == ProbeKind.Dc && p.Red == net && p.Black == NetTable.Ground);
}
