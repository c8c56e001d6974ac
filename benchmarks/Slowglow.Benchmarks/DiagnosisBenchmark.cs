using Slowglow.Bench.Questions;
using Slowglow.Diagnosis;
using Slowglow.Sheets.Readings;
using Slowglow.Tests.ReferenceSolver;

namespace Slowglow.Benchmarks;

/// <summary>The readings of a demo job, taken one after the other as on the bench.</summary>
internal sealed class DiagnosisBenchmark(string folder)
{
    private readonly string path = Path.Combine(DemoSheets.Root(), "demo", folder);

    public DiagnosisRow Run()
    {
        var unit = BenchUnit.From(File.ReadAllText(Path.Combine(path, "sheet.yaml"))).Value!;
        var document = ReadingsReader.Read(File.ReadAllText(Path.Combine(path, "readings.yaml")), unit.Sheet).Value!;
        var first = Watch.Once(() => unit.Diagnostician.Diagnose(new Evidence(document.Complaint, document.Setups, [])));
        var updates = Enumerable
            .Range(1, document.Readings.Count)
            .Select(n => new Evidence(document.Complaint, document.Setups, [.. document.Readings.Take(n)]))
            .Select(evidence => Watch.Once(() => unit.Diagnostician.Diagnose(evidence)))
            .Order()
            .ToArray();
        return new(folder, unit.Sheet.Parts.Count, unit.Circuit.Faults.Count, first, updates[updates.Length / 2], updates[^1]);
    }
}
