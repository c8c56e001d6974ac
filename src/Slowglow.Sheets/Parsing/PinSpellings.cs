namespace Slowglow.Sheets.Parsing;

/// <summary>Electrode spellings that a table of nets knows a pin by, besides its number.</summary>
internal static class PinSpellings
{
    internal static IEnumerable<string> Of(IReadOnlyList<PinPlan> pins, PinPlan pin)
    {
        string[] tried =
        [
            pin.Electrode,
            .. FirstSection(pin.Electrode),
            .. pin.Electrode == "g2" ? ["s"] : Array.Empty<string>(),
        ];
        return tried.Where(name => name.Length > 0 && PinNames.Find(pins, name) == pin);
    }

    private static string[] FirstSection(string electrode) =>
        electrode.Length == 0 ? []
        : electrode[^1] == '1' ? [electrode[..^1]]
        : char.IsAsciiDigit(electrode[^1]) ? []
        : [electrode + "1"];
}
