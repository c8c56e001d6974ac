namespace Slowglow.Sheets.Parsing;

/// <summary>Names that look like slips of the pen.</summary>
internal static class NetChecks
{
    internal static void Run(NetTable nets, Func<string, Place> placeOf, FindingList findings)
    {
        foreach (
            var group in nets
                .Names.Where(n => !n.Contains('.', StringComparison.Ordinal))
                .GroupBy(n => n, StringComparer.OrdinalIgnoreCase)
                .Where(g => g.Count() > 1)
        )
        {
            findings.Warning(
                placeOf(group.Last()),
                $"nets {string.Join(" and ", group)} differ only in capitals, and are different nets",
                "write them alike if they are one",
                group.First()
            );
        }
    }
}
