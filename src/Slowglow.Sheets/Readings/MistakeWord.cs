using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Readings;

/// <summary>A line later called a mistake keeps its text and counts no more: <c>V1.6 = 62 V mistake</c>, <c>mistake: V1.6 = 62 V</c>.</summary>
internal static class MistakeWord
{
    private const string Word = "mistake";

    /// <summary>The line without the word, and whether it was there.</summary>
    internal static (YamlScalar Line, bool Called) Cut(YamlScalar text)
    {
        var line = text.Text;
        var end = line.AsSpan().TrimEnd().TrimEnd(')').TrimEnd('.');
        if (
            end.EndsWith(" " + Word, StringComparison.OrdinalIgnoreCase)
            || end.EndsWith("(" + Word, StringComparison.OrdinalIgnoreCase)
        )
        {
            var kept = end[..^Word.Length].TrimEnd('(').TrimEnd().TrimEnd(',').ToString();
            return (new YamlScalar(kept, text.Place, text.OneLine), true);
        }

        if (
            line.StartsWith(Word, StringComparison.OrdinalIgnoreCase)
            && line.Length > Word.Length
            && line[Word.Length] is ' ' or ':'
        )
        {
            var start = Word.Length + line.AsSpan(Word.Length).IndexOfAnyExcept(' ', ':');
            return start > Word.Length ? (new YamlScalar(line[start..], text.At(start), text.OneLine), true) : (text, false);
        }
        return (text, false);
    }
}
