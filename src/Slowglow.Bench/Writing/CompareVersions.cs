using Slowglow.Bench.Jobs;
using Slowglow.Bench.Questions;
using Slowglow.Quantities;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Writing;

/// <summary>What differs between two versions of a sheet, in the circuit and in what its points should read.</summary>
public sealed class CompareVersions(BenchUnits units)
{
    /// <summary>Volts that nobody would go and measure: common practice, no source.</summary>
    private const double LeastVolts = 5e-3;

    public SheetDifference Run(string before, string after, CancellationToken cancel = default)
    {
        var (old, now) = (units.Of(before).Value, units.Of(after).Value);
        var parts = Parts(SheetReader.Read(before).Value, SheetReader.Read(after).Value);
        return old is null || now is null
            ? new(parts, [], "One of the two has errors, so that what its points should read cannot be worked out.")
            : new(parts, Points(old, now, cancel), null);
    }

    private static List<SheetChange> Parts(Sheet? before, Sheet? after)
    {
        var old = (before?.Parts ?? []).ToDictionary(p => p.Designator, Said);
        var now = (after?.Parts ?? []).ToDictionary(p => p.Designator, Said);
        return
        [
            .. old
                .Keys.Union(now.Keys)
                .Select(d => new SheetChange(d, old.GetValueOrDefault(d), now.GetValueOrDefault(d)))
                .Where(c => c.Before != c.After),
        ];
    }

    private static string Said(Part part) =>
        $"{part.Description}, {string.Join(" ", part.Pins.Select(p => $"{p.Number}={p.Net}"))}";

    private static List<SheetChange> Points(BenchUnit before, BenchUnit after, CancellationToken cancel)
    {
        var now = new ExpectReadings(after)
            .Run(Setup.Default, cancel)
            .GroupBy(e => (e.Probe.Where, e.Probe.Kind))
            .ToDictionary(g => g.Key, g => g.First());
        return
        [
            .. new ExpectReadings(before)
                .Run(Setup.Default, cancel)
                .Where(e => double.IsFinite(e.Nominal) && now.ContainsKey((e.Probe.Where, e.Probe.Kind)))
                .Select(e => (Old: e, New: now[(e.Probe.Where, e.Probe.Kind)]))
                .Where(p => !(p.New.Nominal >= p.Old.Low && p.New.Nominal <= p.Old.High))
                .Where(p => !(p.Old.Unit == "V" && Math.Abs(p.New.Nominal - p.Old.Nominal) < LeastVolts))
                .Select(p => new SheetChange(p.Old.Probe.Where, Figure(p.Old), Figure(p.New))),
        ];
    }

    private static string Figure(Expectation expected) =>
        double.IsFinite(expected.Nominal) ? Engineering.Format(expected.Nominal, expected.Unit) : "no figure";
}
