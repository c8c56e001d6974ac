using System.Buffers;

namespace Slowglow.Sheets.Yaml;

/// <summary>Characters a document may hold.</summary>
internal static class YamlCharacters
{
    internal static readonly SearchValues<char> Allowed = SearchValues.Create(
        Enumerable.Range(0, char.MaxValue + 1).Select(i => (char)i).Where(IsText).ToArray()
    );

    private static bool IsText(char c) => c == '\t' || (c >= ' ' && c != '\u007f' && !(c >= '\u0080' && c <= '\u009f') && c < '\ufdd0' && !char.IsSurrogate(c));

    /// <summary>The line with everything else replaced by blanks.</summary>
    internal static string Cleaned(string line) => string.Create(line.Length, line, (to, from) =>
    {
        for (var i = 0; i < from.Length; i++)
        {
            to[i] = IsText(from[i]) ? from[i] : ' ';
        }
    });
}
