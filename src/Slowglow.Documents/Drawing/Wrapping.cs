namespace Slowglow.Documents.Drawing;

/// <summary>Breaks text into lines that fit.</summary>
internal static class Wrapping
{
    /// <summary>At spaces where there are any; within a word where it alone is too wide. Lines of the text stay lines.</summary>
    public static List<string> Lines(string text, Func<string, double> measure, double width)
    {
        List<string> lines = [];
        foreach (var paragraph in text.Replace("\r", "", StringComparison.Ordinal).Split('\n'))
        {
            var line = "";
            foreach (var word in paragraph.Split(' ').SelectMany(w => Pieces(Clean(w), measure, width)))
            {
                var longer = line.Length == 0 ? word : line + " " + word;
                if (line.Length > 0 && measure(longer) > width)
                {
                    lines.Add(line);
                    line = word;
                }
                else
                {
                    line = longer;
                }
            }

            lines.Add(line);
        }

        return lines;
    }

    private static IEnumerable<string> Pieces(string word, Func<string, double> measure, double width)
    {
        while (word.Length > 1 && measure(word) > width)
        {
            var fits = 1;
            while (fits < word.Length && measure(word[..(fits + 1)]) <= width)
            {
                fits++;
            }

            yield return word[..fits];
            word = word[fits..];
        }

        yield return word;
    }

    private static string Clean(string word) => new([.. word.Where(c => !char.IsControl(c))]);
}
