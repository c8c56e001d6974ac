namespace Slowglow.Sheets.Editing;

/// <summary>Offsets of the lines of a text; line ends of either kind.</summary>
internal sealed class LineIndex
{
    private readonly string text;
    private readonly List<int> starts = [0];

    internal LineIndex(string text)
    {
        this.text = text;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n')))
            {
                starts.Add(i + 1);
            }
        }
    }

    internal int Count => starts.Count;

    /// <summary>Line end that the document uses.</summary>
    internal string NewLine => text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";

    /// <summary>Offset of a line's first character; the end of the text behind the last line.</summary>
    internal int Start(int line) => line < starts.Count ? starts[line] : text.Length;

    internal int Offset(Place place) => Start(place.Line - 1) + place.Column - 1;

    /// <summary>The line without its end.</summary>
    internal string Line(int line) => text[Start(line)..Start(line + 1)].TrimEnd('\r', '\n');

    internal bool IsBlank(int line) => Line(line).AsSpan().Trim() is var bare && (bare.Length == 0 || bare[0] == '#');

    internal int Indent(int line)
    {
        var bare = Line(line);
        return bare.Length - bare.AsSpan().TrimStart().Length;
    }
}
