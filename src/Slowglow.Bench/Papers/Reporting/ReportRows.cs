using Slowglow.Bench.Jobs;
using Slowglow.Bench.Questions;
using Slowglow.Quantities;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;
using Slowglow.Workshop.Papers;

namespace Slowglow.Bench.Papers.Reporting;

/// <summary>Readings of a job as they stand in its report: before and after the repair, with what belongs there.</summary>
internal static class ReportRows
{
    private const int Most = 14;

    /// <summary>A row for each point, kind and setup; the last reading on either side of the repair counts. Looks and mistakes have no row.</summary>
    /// <param name="repaired">Sequence that the repair begins with.</param>
    public static IReadOnlyList<BeforeAfter> Of(OpenedJob job, BenchUnit unit, int repaired, CancellationToken cancel)
    {
        var rows = job
            .Readings.SelectMany(r => r.Reading.Each().Select(reading => (r.Sequence, Reading: reading)))
            .Where(r => r.Reading is { Look: null, IsMistake: false } && r.Reading.Probe.Kind != ProbeKind.Look)
            .GroupBy(r => (r.Reading.Probe.Red, r.Reading.Probe.Black, r.Reading.Probe.Kind, r.Reading.Setup.Name))
            .OrderByDescending(g => g.Any(r => r.Sequence > repaired))
            .Take(Most)
            .Select(g =>
                (
                    Before: g.LastOrDefault(r => r.Sequence < repaired).Reading,
                    After: g.LastOrDefault(r => r.Sequence > repaired).Reading
                )
            )
            .ToList();
        var belongs = rows.Select(r => r.After ?? r.Before!)
            .GroupBy(r => r.Setup)
            .SelectMany(g => Healthy(unit, g.Key, [.. g], cancel))
            .ToDictionary();
        return
        [
            .. rows.Select(r => new BeforeAfter(
                Where(r.After ?? r.Before!, job.Setups[0]),
                Said(r.Before),
                Said(r.After),
                belongs.GetValueOrDefault(r.After ?? r.Before!, "")
            )),
        ];
    }

    private static IEnumerable<(Reading Key, string Value)> Healthy(
        BenchUnit unit,
        Setup setup,
        IReadOnlyList<Reading> readings,
        CancellationToken cancel
    ) =>
        readings.Zip(
            new ExpectReadings(unit).Run(setup, [.. readings.Select(r => r.Probe)], cancel),
            (reading, expected) =>
                (
                    reading,
                    double.IsFinite(expected.Low)
                        ? $"{Engineering.Format(expected.Low, expected.Unit)} to {Engineering.Format(expected.High, expected.Unit)}"
                        : ""
                )
        );

    private static string Where(Reading reading, Setup usual)
    {
        var kind = reading.Probe.KindText is "dc" or "ac" ? reading.Probe.KindText.ToUpperInvariant() : reading.Probe.KindText;
        var setup = reading.Setup.Name == usual.Name ? "" : $" ({(reading.Setup.PowerOff ? "power off" : reading.Setup.Name)})";
        return $"{reading.Probe.Where}, {kind}{setup}";
    }

    private static string Said(Reading? reading) =>
        reading is null ? "" : reading.Shown ?? Engineering.Format(reading.Value, reading.Probe.Unit);
}
