using System.Globalization;
using Slowglow.Sheets.Devices;
using Slowglow.Tests.House;

namespace Slowglow.Tests.Devices;

/// <summary>A row of a valve table under tests/reference.</summary>
internal sealed class ValveRow(IReadOnlyDictionary<string, string> cells)
{
    /// <summary>Rows that somebody read in a source, of valves in the library. The EF86 is that of 1970: the issue of 1956 differs.</summary>
    public static IEnumerable<ValveRow> Read(string table) =>
        CsvFile
            .Read(Path.Combine(Repository.Root, "tests", "reference", table))
            .Select(r => new ValveRow(r))
            .Where(r => r["confidence"] != "memory" && !r["source"].EndsWith("EF86 data sheet, 1956", StringComparison.Ordinal))
            .Where(r => DeviceLibrary.Shipped.Find(r["valve"]) is not null);

    public string this[string column] => cells[column];

    public Device Device => DeviceLibrary.Shipped.Find(cells["valve"])!;

    public bool Has(string column) => cells[column].Length > 0;

    /// <summary>The figure, NaN when the source does not give it.</summary>
    public double Number(string column) => Has(column) ? double.Parse(cells[column], CultureInfo.InvariantCulture) : double.NaN;

    /// <summary>What the row is about, for a failed test's name.</summary>
    public string Label(params string[] columns) => $"{cells["valve"]} {Where(columns)} {cells["source"]}";

    /// <summary>Those of the columns that the table has and the source fills, "name=cell".</summary>
    public string Where(params string[] columns) =>
        string.Join(" ", columns.Where(c => cells.ContainsKey(c) && Has(c)).Select(c => $"{c}={cells[c]}"));
}
