using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>A mapping whose keys are asked for by name; a key that stands twice is reported once.</summary>
internal sealed class Keys
{
    private readonly Dictionary<string, YamlEntry> entries = [];
    private readonly string what;
    private readonly FindingList findings;

    internal Keys(YamlMap map, string what, FindingList findings)
    {
        (this.what, this.findings) = (what, findings);
        Place = map.Place;
        foreach (var entry in map.Entries)
        {
            if (!entries.TryAdd(entry.Key.Text, entry))
            {
                findings.Error(
                    entry.Key.Place,
                    $"{what} has '{entry.Key.Text}' twice",
                    $"the first is on line {entries[entry.Key.Text].Key.Place.Line}; put both together"
                );
            }
        }
    }

    internal Place Place { get; }
    internal IEnumerable<YamlEntry> All => entries.Values;

    internal YamlNode? Find(string key) => entries.GetValueOrDefault(key)?.Value;

    internal YamlEntry? Entry(string key) => entries.GetValueOrDefault(key);

    /// <summary>A single value; null when missing, empty or something else (which is reported).</summary>
    internal YamlScalar? Scalar(string key)
    {
        switch (Find(key))
        {
            case null or YamlScalar { Text: "" }:
                return null;
            case YamlScalar scalar:
                return scalar;
            case var other:
                findings.Error(other.Place, $"'{key}' of {what} holds {other.Kind}, not a single value");
                return null;
        }
    }

    internal string? Text(string key) => Scalar(key)?.Text;

    /// <summary>Keys with values; null when missing, empty or something else (which is reported).</summary>
    internal YamlMap? Map(string key)
    {
        switch (Find(key))
        {
            case null or YamlScalar { Text: "" }:
                return null;
            case YamlMap map:
                return map;
            case var other:
                findings.Error(
                    other.Place,
                    $"'{key}' of {what} holds {other.Kind}, not keys with values",
                    $"write NAME: value lines under {key}:"
                );
                return null;
        }
    }

    internal void WarnUnknown(IReadOnlyList<string> known) => Unknown(known, Severity.Warning);

    internal void RejectUnknown(IReadOnlyList<string> known) => Unknown(known, Severity.Error);

    private void Unknown(IReadOnlyList<string> known, Severity severity)
    {
        foreach (var entry in entries.Values.Where(e => !known.Contains(e.Key.Text)))
        {
            var near = NearestWords.Suggestion(entry.Key.Text, known);
            var remedy = near.Length > 0 ? near : "keys here: " + string.Join(", ", known);
            findings.Add(new Finding(severity, entry.Key.Place, $"'{entry.Key.Text}' is no key of {what}", remedy));
        }
    }
}
