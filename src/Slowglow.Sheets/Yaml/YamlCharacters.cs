using System.Buffers;

namespace Slowglow.Sheets.Yaml;

/// <summary>Characters a document may hold.</summary>
internal static class YamlCharacters
{
    internal static readonly SearchValues<char> Allowed = SearchValues.Create(
        Enumerable.Range(0, char.MaxValue + 1).Select(i => (char)i).Where(IsText).ToArray()
    );

    private static bool IsText(char c) =>
        c == '\t' || (c >= ' ' && c != '\u007f' && !(c >= '\u0080' && c <= '\u009f') && c < '\ufdd0');

    /// <summary>First character that no document may hold; -1 when there is none. Surrogates must come in pairs.</summary>
    internal static int FirstBad(string line)
    {
        var bad = line.AsSpan().IndexOfAnyExcept(Allowed);
        for (var i = 0; i < (bad < 0 ? line.Length : bad); i++)
        {
            if (char.IsSurrogate(line[i]) && !(i + 1 < line.Length && char.IsSurrogatePair(line[i], line[i + 1])))
            {
                return i;
            }

            i += char.IsSurrogate(line[i]) ? 1 : 0;
        }

        return bad;
    }

    /// <summary>The line with everything else replaced by blanks.</summary>
    internal static string Cleaned(string line) =>
        string.Create(
            line.Length,
            line,
            (to, from) =>
            {
                for (var i = 0; i < from.Length; i++)
                {
                    to[i] = IsText(from[i]) && !char.IsSurrogate(from[i]) ? from[i] : ' ';
                }
            }
        );
}
