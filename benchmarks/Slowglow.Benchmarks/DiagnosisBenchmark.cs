using Slowglow.Bench.Questions;
using Slowglow.Diagnosis;
using Slowglow.Sheets.Readings;
using Slowglow.Tests.ReferenceSolver;

namespace Slowglow.Benchmarks;

/// <summary>The readings of a demo job, taken one after the other as on the bench: while one is being taken, the program looks ahead.</summary>
internal sealed class DiagnosisBenchmark(string folder)
{
    public const string Argument = "diagnosis";
    private readonly string path = Path.Combine(DemoSheets.Root(), "demo", folder);

    public DiagnosisRow Run()
    {
        var unit = BenchUnit.From(File.ReadAllText(Path.Combine(path, "sheet.yaml"))).Value!;
        var document = ReadingsReader.Read(File.ReadAllText(Path.Combine(path, "readings.yaml")), unit.Sheet).Value!;
        var last = new List<DiagnosisResult>();
        var first = Watch.Once(() => last.Add(unit.Diagnostician.Diagnose(new(document.Complaint, document.Setups, []))));
        var updates = new List<double>();
        for (var n = 1; n <= document.Readings.Count; n++)
        {
            unit.Diagnostician.Foresee(last[^1].Next, default);
            var evidence = new Evidence(document.Complaint, document.Setups, [.. document.Readings.Take(n)]);
            updates.Add(Watch.Once(() => last.Add(unit.Diagnostician.Diagnose(evidence))));
        }

        updates.Sort();
        return new(folder, unit.Sheet.Parts.Count, unit.Circuit.Faults.Count, first, updates[updates.Count / 2], updates[^1]);
    }
}
