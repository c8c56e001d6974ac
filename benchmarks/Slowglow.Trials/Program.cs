using System.Globalization;
using Slowglow.Bench.Questions;
using Slowglow.Bench.Rehearsals;
using Slowglow.Trials;

// dotnet run -c Release --project benchmarks/Slowglow.Trials [-- --filters --each 10 | --stories docs/stories.md | --cases 60 --doubles 6 --wrong 6 --bridges 0 --seed 1 --by program --draw priors --readings 20 --only NAME --tell FILE]
if (args.Contains("--filters"))
{
    Filters.Write(Console.Out, "tests/reference/filters", Count("--each", 10));
    return;
}
if (Option("--stories", "") is { Length: > 0 } page)
{
    Stories.Write(page, Option("--demo", "demo"), Option("--only", ""));
    return;
}
var request = new RehearsalRequest
{
    Cases = Count("--cases", 60),
    Doubles = Count("--doubles", 6),
    WrongValues = Count("--wrong", 6),
    Bridges = Count("--bridges", 0),
    Seed = Count("--seed", 1),
    By = Enum.Parse<Strategy>(Option("--by", "program"), ignoreCase: true),
    Draw = Enum.Parse<FaultDraw>(Option("--draw", "priors"), ignoreCase: true),
    Rules = new() { MostReadings = Count("--readings", 20) },
};
using var told = Option("--tell", "") is { Length: > 0 } path ? File.CreateText(path) : null;
var all = new List<(string Unit, RehearsalReport Report)>();
foreach (var file in Sheets().Where(f => Option("--only", "").Split(',').Any(o => f.Contains(o, StringComparison.Ordinal))))
{
    if (BenchUnit.From(File.ReadAllText(file)).Value is { } unit)
    {
        all.Add(
            (unit.Sheet.Unit, new RehearseUnit(unit).Run(request, null, c => told?.WriteLine(Report.Line(unit.Sheet.Unit, c))))
        );
        told?.Flush();
        Console.WriteLine(Report.Table([all[^1]]).Split('\n')[^2]);
    }
}
Console.WriteLine();
Console.WriteLine(Report.Table(all));
Console.WriteLine(Report.Reliability(all));

IEnumerable<string> Sheets() =>
    Directory
        .EnumerateFiles(Option("--demo", "demo"), "*.yaml", SearchOption.AllDirectories)
        .Where(f => Path.GetFileName(f) == "sheet.yaml" || Path.GetFileName(Path.GetDirectoryName(f)) == "sheets")
        .Order(StringComparer.Ordinal);

int Count(string name, int otherwise) =>
    int.Parse(Option(name, otherwise.ToString(CultureInfo.InvariantCulture)), CultureInfo.InvariantCulture);

string Option(string name, string otherwise)
{
    var at = Array.IndexOf(args, name);
    return at >= 0 && at + 1 < args.Length ? args[at + 1] : otherwise;
}
