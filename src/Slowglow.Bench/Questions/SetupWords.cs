using System.Text;
using System.Text.RegularExpressions;
using Slowglow.Sheets;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Bench.Questions;

/// <summary>Reads a setup said in one line: the name of a known one, or keys such as <c>mains=110V limiter=40W valves=out</c>.</summary>
public static partial class SetupWords
{
    private const string ListKeys = "pulled lifted";

    /// <summary>The setup, or findings that say what is wrong with the line.</summary>
    public static Parsed<Setup> Read(string text, Sheet sheet, IReadOnlyList<Setup> known)
    {
        var words = text.Trim();
        if (!words.Contains('='))
        {
            var named = known.FirstOrDefault(s => s.Name.Equals(words, StringComparison.OrdinalIgnoreCase));
            return named is not null ? new(named, []) : new(null, [Unknown(words, known)]);
        }

        var document = new StringBuilder("setups:\n  ").Append(Quote(words)).Append(":\n");
        foreach (var (key, value) in Pairs(words))
        {
            document.Append("    ").Append(Quote(key)).Append(": ").Append(Value(key, value)).Append('\n');
        }

        var read = ReadingsReader.Read(document.Append("readings: []\n").ToString(), sheet);
        Finding[] findings = [.. read.Findings.Select(f => f with { Place = Place.None, Text = $"setup \"{words}\": {f.Text}" })];
        var setup = read.HasErrors ? null : read.Value?.Setups.FirstOrDefault(s => s.Name == words);
        return new(setup, findings);
    }

    private static Finding Unknown(string words, IReadOnlyList<Setup> known) =>
        new(
            Severity.Error,
            Place.None,
            $"no setup is called \"{words}\"",
            $"name one of {string.Join(", ", known.Select(s => s.Name))}, or say it in keys: mains=110V limiter=40W valves=out"
        );

    /// <summary>"mains=110 V limiter=40W" gives (mains, 110 V) and (limiter, 40W): a word without = belongs to the value before it.</summary>
    private static IEnumerable<(string Key, string Value)> Pairs(string words)
    {
        foreach (Match match in Pair().Matches(words))
        {
            yield return (match.Groups["key"].Value, match.Groups["value"].Value.Trim().TrimEnd(',', ';'));
        }
    }

    private static string Value(string key, string value)
    {
        if (!ListKeys.Split(' ').Contains(key))
        {
            return Quote(value);
        }

        var items = value.Trim('[', ']').Split([',', ' '], StringSplitOptions.RemoveEmptyEntries);
        return $"[{string.Join(", ", items.Select(Quote))}]";
    }

    private static string Quote(string text) => $"'{text.Replace("'", "''", StringComparison.Ordinal)}'";

    [GeneratedRegex(@"(?<key>[^\s=,;]+)\s*=\s*(?<value>[^=]*?)(?=[\s,;]+[^\s=,;]+\s*=|\s*$)")]
    private static partial Regex Pair();
}
