using Slowglow.Circuits;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts;

namespace Slowglow.Bench.Writing;

/// <summary>Reads a sheet while it is being typed: what is wrong, and what there is to point at. Nothing is solved.</summary>
public sealed class ReadTyped
{
    /// <summary>Never throws on bad text.</summary>
    public TypedSheet Run(string text)
    {
        var sheet = SheetReader.Read(text);
        if (sheet.Value is not { } read)
        {
            return new(false, null, [.. sheet.Findings.Select(Typed)], [], [], []);
        }

        var circuit = sheet.HasErrors ? null : Circuit.From(read);
        IReadOnlyList<Finding> all = [.. sheet.Findings, .. circuit?.Findings ?? []];
        var ends = read.Parts.SelectMany(p => p.Pins).GroupBy(p => p.Net).ToDictionary(g => g.Key, g => g.Count());
        return new(
            circuit?.Value is not null && !all.Any(f => f.Severity == Severity.Error),
            read.Unit,
            [.. all.Select(Typed)],
            [.. read.Nets.Names.Where(n => !n.Contains('.') || n.StartsWith("MAINS.", StringComparison.Ordinal))],
            [.. read.Parts.Select(p => Named(p, read, ends))],
            LookForMissing.In(read)
        );
    }

    internal static TypedFinding Typed(Finding finding) =>
        new(
            finding.Severity.ToString().ToLowerInvariant(),
            finding.Place.Line,
            finding.Place.Column,
            finding.Text,
            finding.Remedy,
            Replacements.Of(finding)
        );

    private static TypedPart Named(Part part, Sheet sheet, Dictionary<string, int> ends) =>
        new(
            part.Designator,
            part.Description,
            [.. part.Pins.Select(p => new TypedPin(p.Number, p.Electrode, p.Net, IsFree(p, sheet, ends)))]
        );

    private static bool IsFree(Pin pin, Sheet sheet, Dictionary<string, int> ends) =>
        ends[pin.Net] == 1 && !sheet.Nets.NamesOf(pin.Net).Any(n => !n.Contains('.'));
}
