using System.Globalization;
using Slowglow.Tests.House;

namespace Slowglow.Tests.Power;

/// <summary>Rows of the reference tables.</summary>
internal static class Published
{
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Table(string name) =>
        CsvFile.Read(Path.Combine(Repository.Root, "tests", "reference", $"{name}.csv"));

    /// <summary>The result of a worked example.</summary>
    public static double Worked(string example, string quantity, string? source = null) =>
        Number(
            Table("worked_examples")
                .First(r =>
                    r["example"] == example
                    && r["result"] == quantity
                    && (source is null || r["source"].Contains(source, StringComparison.Ordinal))
                )["value"]
        );

    public static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
