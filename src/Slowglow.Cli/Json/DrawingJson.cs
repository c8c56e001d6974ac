using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;

namespace Slowglow.Cli.Json;

/// <summary>A drawing: the SVG itself, or null when it went to a file.</summary>
internal sealed record DrawingJson(string? Svg, string? File, int Crossings, int NetNames, IReadOnlyList<FindingJson> Findings)
{
    public static DrawingJson From(UnitDrawing drawing, string? file, IReadOnlyList<DocumentFinding> findings) =>
        new(file is null ? drawing.Svg : null, file, drawing.Crossings, drawing.Tags, [.. findings.Select(FindingJson.From)]);
}
