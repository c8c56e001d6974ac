using Slowglow.Cli.Desk;

namespace Slowglow.Cli.Json;

/// <summary>A finding. Line and column count from 1 and are null where there is no place.</summary>
internal sealed record FindingJson(
    string Severity,
    string Document,
    int? Line,
    int? Column,
    string Text,
    string Remedy,
    string? Subject
)
{
    public static FindingJson From(DocumentFinding found)
    {
        var (document, finding) = found;
        int? line = finding.Place.Line > 0 ? finding.Place.Line : null;
        int? column = finding.Place.Line > 0 ? finding.Place.Column : null;
        return new(FindingLines.Word(finding.Severity), document, line, column, finding.Text, finding.Remedy, finding.Subject);
    }
}
