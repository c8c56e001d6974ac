using System.Text;

namespace Slowglow.Tests.House;

/// <summary>Reads comma-separated tables with quoted cells.</summary>
internal static class CsvFile
{
    /// <summary>Rows as column to cell; the first row names the columns.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Read(string path)
    {
        var rows = Split(File.ReadAllText(path)).Where(r => r.Any(c => c.Length > 0)).ToArray();
        return
        [
            .. rows.Skip(1)
                .Select(r =>
                    rows[0].Select((name, i) => (name, Cell: i < r.Count ? r[i] : "")).ToDictionary(c => c.name, c => c.Cell)
                ),
        ];
    }

    private static IEnumerable<List<string>> Split(string text)
    {
        List<string> row = [];
        var cell = new StringBuilder();
        var quoted = false;
        foreach (var c in text.Replace("\r", "", StringComparison.Ordinal))
        {
            switch (c)
            {
                case '"':
                    quoted = !quoted;
                    break;
                case ',' when !quoted:
                    row.Add(cell.ToString());
                    cell.Clear();
                    break;
                case '\n' when !quoted:
                    row.Add(cell.ToString());
                    cell.Clear();
                    yield return row;
                    row = [];
                    break;
                default:
                    cell.Append(c);
                    break;
            }
        }
        row.Add(cell.ToString());
        yield return row;
    }
}
