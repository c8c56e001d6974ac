using System.Text.RegularExpressions;

namespace Slowglow.Workshop.Words;

/// <summary>Puts the program's own sentences into the words the shop uses. Never applied to what a person wrote.</summary>
public static partial class WordChoice
{
    private static readonly Dictionary<string, string> Other = new(StringComparer.Ordinal)
    {
        ["valve"] = "tube",
        ["valves"] = "tubes",
        ["Valve"] = "Tube",
        ["Valves"] = "Tubes",
        ["anode"] = "plate",
        ["anodes"] = "plates",
        ["Anode"] = "Plate",
        ["Anodes"] = "Plates",
        ["earth"] = "ground",
        ["Earth"] = "Ground",
        ["HT"] = "B+",
    };

    /// <summary>The sentence in the chosen words; only whole words change, so that a net called HT1 keeps its name.</summary>
    public static string Say(string sentence, TradeWords words) =>
        words == TradeWords.Valve ? sentence : Word().Replace(sentence, m => Other.GetValueOrDefault(m.Value, m.Value));

    /// <summary>The keys of a setup in the words that documents use, whichever of the two was typed.</summary>
    public static string UnderstandKeys(string keys) => TubesKey().Replace(keys, "valves$1");

    [GeneratedRegex(@"(?<![\w.])(?:[A-Za-z]+)(?!\w|\.\w|\+)", RegexOptions.CultureInvariant)]
    private static partial Regex Word();

    [GeneratedRegex(@"\btubes(\s*:)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex TubesKey();
}
