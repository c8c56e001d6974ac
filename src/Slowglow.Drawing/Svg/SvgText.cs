using System.Globalization;
using System.Text;

namespace Slowglow.Drawing.Svg;

/// <summary>Builds SVG text: elements, numbers, escapes.</summary>
internal sealed class SvgText
{
    private readonly StringBuilder text = new();
    private int depth;

    public override string ToString() => text.ToString();

    public static string Number(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);

    public static string Escape(string value) =>
        value
            .Replace("&", "&amp;", StringComparison.Ordinal)
            .Replace("<", "&lt;", StringComparison.Ordinal)
            .Replace(">", "&gt;", StringComparison.Ordinal)
            .Replace("\"", "&quot;", StringComparison.Ordinal);

    public void Open(string name, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Line(Start(name, attributes) + ">");
        depth++;
    }

    public void Close(string name)
    {
        depth--;
        Line($"</{name}>");
    }

    public void Empty(string name, params ReadOnlySpan<(string Name, string Value)> attributes) =>
        Line(Start(name, attributes) + "/>");

    public void Element(string name, string content, params ReadOnlySpan<(string Name, string Value)> attributes) =>
        Line($"{Start(name, attributes)}>{Escape(content)}</{name}>");

    /// <summary>Text as it is, line by line.</summary>
    public void Raw(string lines)
    {
        foreach (var line in lines.Split('\n'))
        {
            Line(line);
        }
    }

    private static string Start(string name, ReadOnlySpan<(string Name, string Value)> attributes)
    {
        StringBuilder start = new("<" + name);
        foreach (var (key, value) in attributes)
        {
            start.Append(' ').Append(key).Append("=\"").Append(Escape(value)).Append('"');
        }

        return start.ToString();
    }

    private void Line(string line) => text.Append(' ', depth).Append(line).Append('\n');
}
