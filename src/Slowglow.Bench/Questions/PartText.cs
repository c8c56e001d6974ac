using System.Text.RegularExpressions;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts;

namespace Slowglow.Bench.Questions;

/// <summary>Writes another part into the text of a sheet, on the same ends.</summary>
internal static partial class PartText
{
    private static readonly string[] KindWords = ["pot", "trimmer", "fuse", "zener", "LED", "lamp", "speaker", "attenuator"];

    /// <summary>The sheet's text with the part's words exchanged; null when it is not written on one line.</summary>
    public static string? With(string sheetText, Sheet sheet, Part part, string words)
    {
        var lines = sheetText.Split('\n');
        var at = part.Place.Line - 1;
        if (at < 0 || at >= lines.Length || OneLine().Match(lines[at]) is not { Success: true } match)
        {
            return null;
        }

        var said = match.Groups["said"].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var arrow = Array.IndexOf(said, "->");
        var ends = arrow > 0 ? arrow - 1 : Array.FindIndex(said, w => w.Contains('='));
        if (ends < 1)
        {
            return null;
        }

        string[] old = said[..ends];
        List<string> fresh = [.. words.Split(' ', StringSplitOptions.RemoveEmptyEntries)];
        if (
            KindWords.Contains(old[0], StringComparer.OrdinalIgnoreCase)
            && !fresh[0].Equals(old[0], StringComparison.OrdinalIgnoreCase)
        )
        {
            fresh.Insert(0, old[0]);
        }

        // A pot keeps the name of its control and its taper unless told otherwise.
        fresh.AddRange(old.Where(w => sheet.Controls.Any(c => c.Name == w) && !fresh.Contains(w)));
        string[] tapers = ["lin", "log", "antilog"];
        if (!fresh.Exists(w => tapers.Contains(w)))
        {
            fresh.AddRange(old.Where(tapers.Contains));
        }

        lines[at] = $"{match.Groups["head"].Value} {string.Join(' ', fresh.Concat(said[ends..]))}";
        return string.Join('\n', lines);
    }

    [GeneratedRegex(@"^(?<head>\s*[^\s:]+\s*:)\s*(?<said>[^\s{#\[][^#{]*?)\s*(#.*)?\r?$")]
    private static partial Regex OneLine();
}
