using System.Globalization;

namespace Slowglow.Bench.Jobs.Demo;

/// <summary>A table of the demo: a line of names, then a line a row, cells without commas or quotes.</summary>
internal sealed class DemoTable
{
    private readonly Dictionary<string, int> columns;

    private DemoTable(string[] names, IReadOnlyList<string[]> rows)
    {
        columns = names.Select((n, i) => (n, i)).ToDictionary(c => c.n, c => c.i);
        Rows = [.. rows.Where(r => r.Length == names.Length)];
    }

    public IReadOnlyList<string[]> Rows { get; }

    /// <summary>Empty when the demo does not have it.</summary>
    public static async Task<DemoTable> ReadAsync(string name, CancellationToken cancel)
    {
        var path = DemoFolders.File(name);
        var lines = path is null ? [] : await File.ReadAllLinesAsync(path, cancel);
        return new(
            lines.Length == 0 ? [] : lines[0].Split(','),
            [.. lines.Skip(1).Where(l => l.Length > 0).Select(l => l.Split(','))]
        );
    }

    public string Text(string[] row, string column) => row[columns[column]];

    public decimal Figure(string[] row, string column) => decimal.Parse(Text(row, column), CultureInfo.InvariantCulture);

    public int Whole(string[] row, string column) => (int)Figure(row, column);
}
