using Slowglow.Sheets;

namespace Slowglow.Browser.Tests.Typing;

/// <summary>Compares two sheets by what they are: parts, ratings, and which ends share a net, whatever the nets are called.</summary>
internal static class SameCircuit
{
    public static IReadOnlyList<string> Parts(Sheet sheet) =>
        [.. sheet.Parts.Select(p => $"{p.Designator}: {p.Description}").Order(StringComparer.Ordinal)];

    /// <summary>A line for each net: the ends that share it.</summary>
    public static IReadOnlyList<string> Nets(Sheet sheet) =>
        [
            .. sheet
                .Parts.SelectMany(p => p.Pins.Select(e => (e.Net, End: $"{p.Designator}.{e.Number}")))
                .GroupBy(e => e.Net)
                .Select(n => string.Join(" ", n.Select(e => e.End).Order(StringComparer.Ordinal)))
                .Order(StringComparer.Ordinal),
        ];
}
