namespace Slowglow.Sheets.Yaml;

/// <summary>Inside { } a comma ends a value, so <c>{ ohms: 4,7k }</c> reads as two entries: this puts the figure together again.</summary>
internal static class DecimalComma
{
    /// <summary>The entry before, with the whole figure; null when the two are no halves of one.</summary>
    internal static YamlEntry? Joined(YamlEntry before, YamlNode key, YamlNode value)
    {
        if (
            before.Value is not YamlScalar { OneLine: true } whole
            || key is not YamlScalar { OneLine: true } part
            || value is not YamlScalar { Text: "" }
        )
        {
            return null;
        }

        var touches = part.Place.Line == whole.Place.Line && part.Place.Column == whole.Place.Column + whole.Text.Length + 1;
        var figure =
            whole.Text.Length > 0 && whole.Text.All(char.IsAsciiDigit) && part.Text.Length > 0 && char.IsAsciiDigit(part.Text[0]);
        return touches && figure ? before with { Value = whole with { Text = $"{whole.Text},{part.Text}" } } : null;
    }
}
