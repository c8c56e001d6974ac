using System.Globalization;
using Slowglow.Bench.Questions;
using Slowglow.Bench.Rehearsals;
using Slowglow.Diagnosis;
using Slowglow.Quantities;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Trials;

/// <summary>Writes docs/stories.md: what the program says of known faults, word for word.</summary>
internal static class Stories
{
    private const int MostReadings = 5;
    private const double Certain = 0.9;
    private static readonly Setup[] Setups = [Setup.Default, Setup.Cold];

    public static void Write(string page, string demo, string only)
    {
        using var text = File.CreateText(page);
        text.WriteLine("# Twelve faults of the trade, as the program tells them");
        text.WriteLine();
        text.WriteLine(
            "Made by `dotnet run -c Release --project benchmarks/Slowglow.Trials -- --stories docs/stories.md`. The units are invented, the faults are not. Each is hidden in a unit that is not the"
        );
        text.WriteLine(
            "drawing (other valves, other parts within their tolerances, a meter with an error, see [rehearsal.md](rehearsal.md)); the program hears the complaint, proposes readings, and what the meter says there is"
        );
        text.WriteLine(
            "solved from that unit. Everything but the title, the complaint and the last line of a story is the program's own word."
        );
        foreach (var story in WorkedStory.All.Where(s => s.Title.Contains(only, StringComparison.Ordinal)))
        {
            Tell(story, demo, text);
            text.Flush();
        }
    }

    private static void Tell(WorkedStory story, string demo, TextWriter text)
    {
        var unit = BenchUnit.From(File.ReadAllText(Path.Combine(demo, story.Sheet))).Value!;
        var fault = unit.Circuit.Faults.FirstOrDefault(f => f.ToString().StartsWith(story.Fault, StringComparison.Ordinal));
        if (fault is null)
        {
            var part = story.Fault.Split(' ')[0];
            var known = unit.Circuit.Faults.Where(f => f.Part == part).Select(f => f.ToString());
            Console.WriteLine($"{story.Title}: no such fault in {story.Sheet}; {part} has {string.Join(", ", known)}");
            return;
        }

        if (new HiddenUnits(unit, 1).HideThis(fault, story.IsFuseBlown, story.Complaint) is not { } hidden)
        {
            Console.WriteLine($"{story.Title}: the unit cannot be solved.");
            return;
        }

        text.WriteLine();
        text.WriteLine($"## {story.Title}");
        text.WriteLine();
        text.WriteLine($"{unit.Sheet.Unit}. The customer says: *{hidden.Complaint}*.");
        text.WriteLine();
        var result = Measure(unit, hidden, text);
        Conclude(result, text);
        text.WriteLine();
        text.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"What was hidden: {hidden.Fault.Words}. Minutes on the bench: {hidden.Minutes:0}."
            )
        );
        Console.WriteLine(
            $"{story.Title}: {hidden.Fault.Words}; says {result.Suspects.FirstOrDefault()?.Words} {result.Suspects.FirstOrDefault()?.Probability:P0}"
        );
    }

    private static DiagnosisResult Measure(BenchUnit unit, HiddenUnit hidden, TextWriter text)
    {
        var result = Diagnose(unit, hidden);
        text.WriteLine($"At first: {result.Summary}");
        text.WriteLine();
        for (var n = 1; n <= MostReadings && !IsCertain(result) && result.Next.Count > 0; n++)
        {
            var next = result.Next[0];
            var before = hidden.Readings.Count;
            hidden.Measure(next.Probe, next.Setup);
            result = Diagnose(unit, hidden);
            var said = hidden.Readings.Count > before ? Said(result.Readings[^1]) : "does not come to rest";
            text.WriteLine(
                string.Create(CultureInfo.InvariantCulture, $"{n}. {next.Why} ({next.Risk}, {next.Minutes:0.#} min)  ")
            );
            text.WriteLine($"   {said}");
        }

        return result;
    }

    private static string Said(ReadingVerdict verdict)
    {
        var (reading, probe) = (verdict.Reading, verdict.Reading.Probe);
        var figure = reading.Said == MeterSaid.Overload ? "overload" : Engineering.Format(reading.Value, probe.Unit);
        return $"{probe.Where}{(probe.Kind == ProbeKind.Dc ? "" : $" ({probe.KindText})")} = {figure}, {verdict.Word}";
    }

    private static DiagnosisResult Diagnose(BenchUnit unit, HiddenUnit hidden) =>
        unit.Diagnostician.Diagnose(new(hidden.Complaint, Setups, [.. hidden.Readings]));

    private static bool IsCertain(DiagnosisResult result) =>
        result.Suspects.Count > 0 && result.Suspects[0].Probability >= Certain;

    private static void Conclude(DiagnosisResult result, TextWriter text)
    {
        text.WriteLine();
        text.WriteLine($"Verdict: {result.Summary}");
        text.WriteLine();
        var first = result.Suspects.FirstOrDefault();
        string[] lines =
        [
            .. first?.Explains ?? [],
            .. first?.Misfits ?? [],
            .. result.RuledOut,
            result.Prove,
            result.Stop,
            result.BeforePower,
            .. result.RootCauses.Select(r => r.Text),
        ];
        foreach (var line in lines.Where(l => l.Length > 0).Distinct())
        {
            text.WriteLine($"- {line}");
        }
    }
}
