using Slowglow.Circuits;
using Slowglow.Diagnosis;
using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>The answer of <c>diagnose</c> for people: a sentence first, then who is suspected and why, then what to do next.</summary>
internal static class DiagnosisReport
{
    /// <summary>Suspects shown; the rest is counted.</summary>
    private const int Shown = 8;

    public static void Write(IAnsiConsole console, Sheet sheet, DiagnosisResult result)
    {
        console.Heading(sheet.Unit);
        console.Say(result.Summary);
        Complaint(console, result.Complaint);
        Readings(console, result.Readings);
        Suspects(console, result);
        if (result.RuledOut.Count > 0)
        {
            console.Heading("Ruled out");
            foreach (var sentence in result.RuledOut)
            {
                console.Say($"- {sentence}");
            }
        }
        NextReadings.Write(console, sheet, result.Next);
        foreach (var advice in new[] { result.Stop, result.Prove }.Where(a => a.Length > 0))
        {
            console.Say(advice);
        }
        if (result.RootCauses.Count > 0)
        {
            console.Heading("Before a new part goes in");
            console.Say(result.BeforePower);
            foreach (var cause in result.RootCauses)
            {
                console.Say($"- {cause.Text}");
            }
        }
    }

    private static void Complaint(IAnsiConsole console, IReadOnlyList<UnderstoodWord> words)
    {
        if (words.Count == 0)
        {
            return;
        }

        console.Heading("The complaint");
        foreach (var word in words)
        {
            var channel = word.Channel is { } name ? $", {name} channel" : "";
            console.Say(
                word.Descriptor.Length == 0
                    ? $"- \"{word.Words}\" tells nothing that can be weighed"
                    : $"- \"{word.Words}\" taken as {word.Descriptor}{channel}{(word.Computed ? "" : " (weight by common practice)")}"
            );
        }
    }

    private static void Readings(IAnsiConsole console, IReadOnlyList<ReadingVerdict> readings)
    {
        if (readings.Count == 0)
        {
            return;
        }

        console.Heading("Readings");
        var table = Layout.Table("Point", "Kind", "Setup", ">Reads", ">Belongs", "Band", "");
        foreach (var verdict in readings)
        {
            var (probe, unit) = (verdict.Reading.Probe, verdict.Reading.Probe.Unit);
            table.Row(
                probe.Where,
                probe.KindText,
                verdict.Reading.Setup.Name,
                verdict.Reading.Shown ?? Figures.Say(verdict.Reading.Value, unit),
                Figures.Shown(verdict.Nominal, unit),
                Figures.Band(verdict.Low, verdict.High, unit),
                verdict.Word
            );
        }
        console.Write(table);
    }

    private static void Suspects(IAnsiConsole console, DiagnosisResult result)
    {
        console.Heading("Suspects");
        var table = Layout.Table(">", "Part", "Likeliest fault", ">Chance", "Why");
        foreach (var (suspect, number) in result.Suspects.Take(Shown).Select((s, i) => (s, i + 1)))
        {
            table.Row(
                $"{number}",
                string.Join(suspect.Second is null ? " or " : " and ", suspect.Group),
                suspect.Words,
                Figures.Percent(suspect.Probability),
                Why(suspect)
            );
        }

        var rest = result.Suspects.Skip(Shown).ToArray();
        if (rest.Length > 0)
        {
            table.Row("", $"{rest.Length} others", "", Figures.Percent(rest.Sum(s => s.Probability)), "");
        }
        table.Row("", "none of these", "", Figures.Percent(result.NoneOfThese), "");
        table.Row("", "nothing wrong", "", Figures.Percent(result.Healthy), "");
        console.Write(table);
    }

    private static string Why(Suspect suspect)
    {
        IEnumerable<string> lines =
        [
            .. suspect.History.Length > 0 ? [$"{suspect.Part} was {suspect.History}."] : Array.Empty<string>(),
            .. suspect.Explains,
            .. suspect.Misfits.Select(m => $"But: {m}"),
            .. suspect.Separates.Length > 0 ? [$"To tell apart: {suspect.Separates}"] : Array.Empty<string>(),
        ];
        return string.Join('\n', lines);
    }
}
