using Slowglow.Sheets;
using Slowglow.Sheets.Readings;

namespace Slowglow.Bench.Jobs.Demo;

/// <summary>A demo folder, read.</summary>
internal sealed record DemoUnit(string SheetText, Sheet Sheet, ReadingsDocument Readings, JobCard Card)
{
    /// <summary>Reads sheet.yaml and, beside it, readings.yaml and job.yaml where they are there.</summary>
    public static async Task<Parsed<DemoUnit>> ReadAsync(string folder, BenchUnits units, CancellationToken cancel)
    {
        var sheetText = await File.ReadAllTextAsync(Path.Combine(folder, "sheet.yaml"), cancel);
        var unit = units.Of(sheetText);
        if (unit.Value is null)
        {
            return new(null, unit.Findings);
        }

        var sheet = unit.Value.Sheet;
        var readings = await TextAsync(folder, "readings.yaml", cancel) is { } r
            ? ReadingsReader.Read(r, sheet)
            : new(NoReadings, []);
        var card = JobCardReader.Read(await TextAsync(folder, "job.yaml", cancel) ?? "state: on the bench");
        IReadOnlyList<Finding> findings = [.. unit.Findings, .. readings.Findings, .. card.Findings];
        return new(
            readings.Value is null || card.Value is null ? null : new DemoUnit(sheetText, sheet, readings.Value, card.Value),
            findings
        );
    }

    private static ReadingsDocument NoReadings => new(null, [], []);

    private static async Task<string?> TextAsync(string folder, string file, CancellationToken cancel)
    {
        var path = Path.Combine(folder, file);
        return File.Exists(path) ? await File.ReadAllTextAsync(path, cancel) : null;
    }
}
