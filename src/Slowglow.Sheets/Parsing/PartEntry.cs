using Slowglow.Sheets.Yaml;

namespace Slowglow.Sheets.Parsing;

/// <summary>One entry under parts, taken apart: words, ends and, in the long form, keys.</summary>
internal sealed class PartEntry
{
    internal required string Designator { get; init; }

    /// <summary>Of the designator.</summary>
    internal required Place Place { get; init; }

    /// <summary>Words of the WHAT and its ratings, not yet understood.</summary>
    internal List<Word> Words { get; set; } = [];

    /// <summary>What stands before the arrow.</summary>
    internal Word? From { get; set; }

    /// <summary>What stands after the arrow.</summary>
    internal Word? To { get; set; }

    /// <summary><c>name=value</c> words and pin keys, not yet understood.</summary>
    internal List<(Word Name, Word Value)> Pairs { get; } = [];

    /// <summary>Keys of the long form, not yet understood.</summary>
    internal Dictionary<string, YamlEntry> Keys { get; } = [];

    /// <summary>Names a key may have, for the nearest right one.</summary>
    internal HashSet<string> KnownKeys { get; } = ["is", "between", "from", "to", "access", "note", "like", "pins"];

    /// <summary>Words tried, for the nearest right one.</summary>
    internal HashSet<string> KnownWords { get; } = [];

    internal bool IsLong { get; init; }

    /// <summary>Minutes to get at the part; NaN when not said.</summary>
    internal double AccessMinutes { get; set; } = double.NaN;

    internal bool HasEnds => From is not null || To is not null || Pairs.Count > 0;
}
