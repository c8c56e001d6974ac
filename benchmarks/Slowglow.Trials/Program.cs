using System.Globalization;
using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Sheets;
using Slowglow.Trials;

// dotnet run -c Release --project benchmarks/Slowglow.Trials [-- --count 60 --readings 6 --seed 1 --demo demo --out docs/trials.md --only NAME --tell]
var count = int.Parse(Option("--count", "60"), CultureInfo.InvariantCulture);
var mostReadings = int.Parse(Option("--readings", "6"), CultureInfo.InvariantCulture);
var seed = int.Parse(Option("--seed", "1"), CultureInfo.InvariantCulture);
var all = new List<(string, IReadOnlyList<TrialResult>)>();
foreach (var folder in Directory.GetDirectories(Option("--demo", "demo")).Order(StringComparer.Ordinal))
{
    var sheet = SheetReader.Read(File.ReadAllText(Path.Combine(folder, "sheet.yaml"))).Value;
    var circuit = sheet is null ? null : Circuit.From(sheet).Value;
    if (circuit is null || !folder.Contains(Option("--only", ""), StringComparison.Ordinal))
    {
        continue;
    }
    all.Add((circuit.Sheet.Unit, RunAll(circuit)));
}
var report = Report.Write(all, mostReadings, seed);
if (Option("--out", "") is { Length: > 0 } path)
{
    File.WriteAllText(path, report);
}
Console.WriteLine(string.Join('\n', report.Split('\n').SkipWhile(l => !l.StartsWith('|')).TakeWhile(l => l.StartsWith('|'))));

string Option(string name, string otherwise)
{
    var at = Array.IndexOf(args, name);
    return at >= 0 && at + 1 < args.Length ? args[at + 1] : otherwise;
}

List<TrialResult> RunAll(Circuit circuit)
{
    var worlds = new Worlds(circuit);
    var random = new Random(seed);
    var trial = new Trial(new Diagnostician(worlds), mostReadings);
    var results = new List<TrialResult>();
    foreach (var (faults, complaint) in new FaultPicker(worlds, new ComplaintWriter(worlds), random).Pick(count).ToList())
    {
        var result = trial.Run(new HiddenUnit(worlds, faults, random), complaint);
        results.Add(result);
        Tell(result);
    }
    return results;
}

void Tell(TrialResult result)
{
    if (!args.Contains("--tell"))
    {
        return;
    }
    Console.WriteLine(
        $"{result.Rank, 3} {string.Join(" + ", result.Hidden)} | {result.Complaint} | {result.First} {result.FirstProbability:F2} (of {result.FirstGroup}) none {result.None:F2} | {result.WorstUpdateMilliseconds:F0} ms"
    );
    if (result.Rank > 1)
    {
        Console.WriteLine("      " + string.Join("; ", result.Story));
    }
}
