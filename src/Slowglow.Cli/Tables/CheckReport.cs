using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Tables;

/// <summary>The answer of <c>check</c> for people.</summary>
internal static class CheckReport
{
    public static void Write(IAnsiConsole console, SheetCheck check, string document)
    {
        var maker = check.Maker is { } name ? $", {name}" : "";
        console.Say($"{check.Unit}{maker}: {check.Parts} parts, {check.Nets} nets, {check.Faults} faults can be computed.");
        console.Say(
            check.Channels.Count > 0
                ? $"Signal paths: {string.Join(", ", check.Channels)}."
                : "No signal path is named, so levels and headroom cannot be computed; add a signal entry."
        );

        if (check.Assumptions.Count > 0)
        {
            console.Heading("Assumed, because the drawing does not say");
            var table = Layout.Table("Parts", "What", ">Figure", "Because");
            foreach (var same in check.Assumptions.GroupBy(a => (a.What, a.Figure, a.Reason)))
            {
                table.Row(string.Join(", ", same.Select(a => a.Subject)), same.Key.What, same.Key.Figure, same.Key.Reason);
            }
            console.Write(table);
        }

        if (check.Findings.Count > 0)
        {
            console.Heading("Worth knowing");
            FindingLines.Write(console, check.Findings.Select(f => new DocumentFinding(document, f)), Severity.Note);
        }
    }
}
