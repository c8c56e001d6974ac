using Slowglow.Circuits;
using Slowglow.Circuits.Models.Valve;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Tests.ReferenceSolver;

/// <summary>
/// What the heaters' volts leave of each valve's emission, worked out from the readings of our worlds: a cathode's warmth has a time
/// constant of seconds, which the reference would have to run through.
/// </summary>
internal static class HeaterWarmth
{
    public static IReadOnlyList<Dictionary<string, double>> Of(
        Worlds worlds,
        IReadOnlyList<IReadOnlyList<Fault>> sets,
        CancellationToken cancel,
        Setup? setup = null
    )
    {
        var halves = worlds.Circuit.Sheet.Parts.OfType<ValvePart>().SelectMany(Halves).ToList();
        var probes = halves.SelectMany(h => new[] { h.Across(ProbeKind.Ac), h.Across(ProbeKind.Dc) }).ToList();
        var meter = MeterClass.Handheld with { InputOhms = 1e15 };
        var answers = worlds.Ask(setup ?? Setup.Default, sets, probes, meter, cancel: cancel);
        return [.. answers.Select(a => Warmths(halves, a))];
    }

    private sealed record Half(string Valve, string One, string Other, double RatedVolts)
    {
        public Probe Across(ProbeKind kind) => new($"{One} - {Other}", One, Other, kind);
    }

    private static IEnumerable<Half> Halves(ValvePart valve)
    {
        string[] Nets(string electrode) =>
            [.. valve.Device.Pinout.Where(p => p.Electrode == electrode).Select(p => valve.NetOf(p.Number)!)];
        var (ends, tap) = (Nets("h"), Nets("ht"));
        if (ends.Length != 2 || !valve.Device.Limits.TryGetValue("heaterVolts", out var volts))
        {
            return [];
        }

        return tap.Length == 0
            ? [new(valve.Designator, ends[0], ends[1], volts)]
            : [new(valve.Designator, ends[0], tap[0], volts), new(valve.Designator, tap[0], ends[1], volts)];
    }

    private static Dictionary<string, double> Warmths(List<Half> halves, Answer[] answers)
    {
        double Square(int half)
        {
            var (ac, dc) = (answers[2 * half], answers[(2 * half) + 1]);
            return ac.HasValue && dc.HasValue
                ? ((ac.Value * ac.Value) + (dc.Value * dc.Value)) / (halves[half].RatedVolts * halves[half].RatedVolts)
                : double.NaN;
        }

        return Enumerable
            .Range(0, halves.Count)
            .GroupBy(h => halves[h].Valve)
            .Select(g => (g.Key, Share: Math.Sqrt(g.Average(Square))))
            .Where(w => double.IsFinite(w.Share) && CathodeWarmth.Of(w.Share) < 0.998)
            .ToDictionary(w => w.Key, w => CathodeWarmth.Of(w.Share));
    }
}
