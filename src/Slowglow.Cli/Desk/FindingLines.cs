using Slowglow.Sheets;
using Spectre.Console;

namespace Slowglow.Cli.Desk;

/// <summary>Findings as lines a person reads: "combo.yaml, line 4, column 9: error: ... Would be right: ...".</summary>
internal static class FindingLines
{
    /// <summary>Writes every finding of at least that severity.</summary>
    public static void Write(IAnsiConsole console, IEnumerable<DocumentFinding> findings, Severity least)
    {
        foreach (var (document, finding) in findings.Where(f => f.Finding.Severity >= least))
        {
            var place = finding.Place == Place.None ? document : $"{document}, {finding.Place}";
            console.Write(new Text(place + ": "));
            console.Write(new Text(Word(finding.Severity), Style(finding.Severity)));
            console.Write(new Text($": {finding.Text}{Remedy(finding)}\n"));
        }
    }

    /// <summary>"note", "warning" or "error".</summary>
    public static string Word(Severity severity) =>
        severity switch
        {
            Severity.Note => "note",
            Severity.Warning => "warning",
            _ => "error",
        };

    private static string Remedy(Finding finding)
    {
        var end = finding.Text.EndsWith('.') || finding.Text.EndsWith('?') ? " " : "; ";
        return finding.Remedy.Length == 0 ? "" : end + finding.Remedy;
    }

    private static Style Style(Severity severity) =>
        severity switch
        {
            Severity.Note => new Style(Color.Blue),
            Severity.Warning => new Style(Color.Yellow),
            _ => new Style(Color.Red),
        };
}
