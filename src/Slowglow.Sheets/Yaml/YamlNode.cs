namespace Slowglow.Sheets.Yaml;

/// <summary>A node of the document with the place where it starts.</summary>
internal abstract record YamlNode(Place Place)
{
    /// <summary>"a word", "a list", "keys": for messages.</summary>
    internal abstract string Kind { get; }
}

/// <summary>A scalar. YAML 1.2 words only: every plain scalar is kept as its text.</summary>
/// <param name="OneLine">True when the text stands letter for letter in the document, so that words inside have places.</param>
internal sealed record YamlScalar(string Text, Place Place, bool OneLine) : YamlNode(Place)
{
    internal override string Kind => Text.Length == 0 ? "nothing" : "a single value";

    /// <summary>Place of the character at <paramref name="offset"/> of the text.</summary>
    internal Place At(int offset) => OneLine ? new Place(Place.Line, Place.Column + offset) : Place;

    internal Word AsWord => new(Text, Place);
}

/// <summary>A list.</summary>
internal sealed record YamlList(IReadOnlyList<YamlNode> Items, Place Place) : YamlNode(Place)
{
    internal override string Kind => "a list";
}

/// <summary>Keys with values, in document order; a key may stand twice.</summary>
internal sealed record YamlMap(IReadOnlyList<YamlEntry> Entries, Place Place) : YamlNode(Place)
{
    internal override string Kind => "keys with values";

    internal YamlNode? Find(string key) => Entries.FirstOrDefault(e => e.Key.Text == key)?.Value;
}

/// <summary>One key with its value.</summary>
internal sealed record YamlEntry(YamlScalar Key, YamlNode Value);
