using System.Text;

namespace Slowglow.Diagnosis.Priors;

/// <summary>Reads the data files shipped inside this room: comma-separated, a header row, double quotes around text with commas.</summary>
internal static class EmbeddedTable
{
    /// <summary>All rows but the header, split into fields.</summary>
    public static IReadOnlyList<string[]> Rows(string name)
    {
        using var stream =
            typeof(EmbeddedTable).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The data file {name} is not in the program.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        var rows = new List<string[]>();
        reader.ReadLine();
        while (reader.ReadLine() is { } line)
        {
            if (line.Length > 0)
            {
                rows.Add(Split(line));
            }
        }
        return rows;
    }

    private static string[] Split(string line)
    {
        var fields = new List<string>();
        var field = new StringBuilder();
        var quoted = false;
        foreach (var c in line)
        {
            if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(c);
            }
        }
        fields.Add(field.ToString());
        return [.. fields];
    }
}
