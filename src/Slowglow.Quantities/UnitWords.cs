namespace Slowglow.Quantities;

/// <summary>What may follow a number: a prefix, a unit, or both, as drawings spell them.</summary>
internal static class UnitWords
{
    private static readonly Dictionary<string, (double Scale, Unit Unit)> Words = new(StringComparer.OrdinalIgnoreCase)
    {
        ["ohm"] = (1, Unit.Ohm),
        ["ohms"] = (1, Unit.Ohm),
        ["r"] = (1, Unit.Ohm),
        ["v"] = (1, Unit.Volt),
        ["volt"] = (1, Unit.Volt),
        ["volts"] = (1, Unit.Volt),
        ["vac"] = (1, Unit.Volt),
        ["vdc"] = (1, Unit.Volt),
        ["vrms"] = (1, Unit.Volt),
        ["v~"] = (1, Unit.Volt),
        ["a"] = (1, Unit.Ampere),
        ["amp"] = (1, Unit.Ampere),
        ["amps"] = (1, Unit.Ampere),
        ["aac"] = (1, Unit.Ampere),
        ["adc"] = (1, Unit.Ampere),
        ["w"] = (1, Unit.Watt),
        ["watt"] = (1, Unit.Watt),
        ["watts"] = (1, Unit.Watt),
        ["va"] = (1, Unit.VoltAmpere),
        ["f"] = (1, Unit.Farad),
        ["fd"] = (1, Unit.Farad),
        ["h"] = (1, Unit.Henry),
        ["hy"] = (1, Unit.Henry),
        ["henry"] = (1, Unit.Henry),
        ["henries"] = (1, Unit.Henry),
        ["hz"] = (1, Unit.Hertz),
        ["c/s"] = (1, Unit.Hertz),
        ["cps"] = (1, Unit.Hertz),
        ["c"] = (1, Unit.Hertz),
        ["%"] = (0.01, Unit.Percent),
        ["percent"] = (0.01, Unit.Percent),
        ["pc"] = (0.01, Unit.Percent),
        ["min"] = (1, Unit.Minute),
        ["mins"] = (1, Unit.Minute),
        ["minute"] = (1, Unit.Minute),
        ["minutes"] = (1, Unit.Minute),
        ["hour"] = (60, Unit.Minute),
        ["hours"] = (60, Unit.Minute),
        ["s"] = (1.0 / 60, Unit.Minute),
        ["sec"] = (1.0 / 60, Unit.Minute),
        ["seconds"] = (1.0 / 60, Unit.Minute),
    };

    // Units that take no prefix; "c" alone is no unit (only "kc" was ever written).
    private static readonly HashSet<string> NeverPrefixed = new(StringComparer.OrdinalIgnoreCase)
    {
        "%",
        "percent",
        "pc",
        "min",
        "mins",
        "minute",
        "minutes",
        "hour",
        "hours",
        "s",
        "sec",
        "seconds",
        "r",
    };

    /// <summary>Reads what follows a number; false when it is no unit of this trade.</summary>
    internal static bool TryRead(string text, out double scale, out Unit unit, out SpellingDoubt doubt)
    {
        doubt = SpellingDoubt.None;
        (scale, unit) = (1, Unit.None);
        if (text.Length == 0)
        {
            return true;
        }

        if (Microfarads(text, ref scale, ref doubt))
        {
            unit = Unit.Farad;
            return true;
        }

        if (text != "c" && text != "C" && Words.TryGetValue(text, out var whole))
        {
            (scale, unit) = whole;
            return true;
        }

        return Prefixed(text, ref scale, ref unit);
    }

    private static bool Microfarads(string text, ref double scale, ref SpellingDoubt doubt)
    {
        switch (text)
        {
            case "mf" or "MF" or "Mf":
                (scale, doubt) = (1e-6, SpellingDoubt.OldMicrofarad);
                return true;
            case "mF":
                (scale, doubt) = (1e-3, SpellingDoubt.Millifarad);
                return true;
        }

        switch (text.ToLowerInvariant())
        {
            case "mfd" or "mfds":
                scale = 1e-6;
                return true;
            case "mmf" or "mmfd" or "uuf" or "uufd":
                scale = 1e-12;
                return true;
            default:
                return false;
        }
    }

    private static bool Prefixed(string text, ref double scale, ref Unit unit)
    {
        var rest = text[1..];
        var prefix = Prefix(text[0], rest);
        if (prefix == 0)
        {
            return false;
        }

        if (rest.Length == 0)
        {
            scale = prefix;
            return true;
        }

        if (NeverPrefixed.Contains(rest) || !Words.TryGetValue(rest, out var word))
        {
            return false;
        }

        (scale, unit) = (prefix * word.Scale, word.Unit);
        return true;
    }

    // Capital M before A or H is milli on old drawings: nobody draws megamperes or megahenries.
    private static double Prefix(char letter, string rest) =>
        letter switch
        {
            'p' or 'P' => 1e-12,
            'n' or 'N' => 1e-9,
            'u' or 'U' => 1e-6,
            'm' => 1e-3,
            'M' when rest is "A" or "a" or "H" or "h" or "Hy" => 1e-3,
            'M' => 1e6,
            'k' or 'K' => 1e3,
            'G' => 1e9,
            _ => 0,
        };
}
