using System.Globalization;
using System.Text.RegularExpressions;

namespace Slowglow.Quantities;

/// <summary>Reads figures as drawings and meters spell them: 4k7, 4.7 kohm, 2n2, R47, 6 %, -12.3 mV.</summary>
public static partial class QuantityText
{
    private const int LongestText = 40;

    /// <summary>Reads a figure with or without a unit. False when the text is none; never throws.</summary>
    public static bool TryRead(string text, out Quantity quantity)
    {
        quantity = default;
        if (text.Length is 0 or > LongestText)
        {
            return false;
        }

        var plain = Plain(text);
        return TryLetterAsPoint(plain, out quantity) || TryNumber(plain, out quantity);
    }

    /// <summary>Reads a figure that can stand for <paramref name="unit"/>: says that unit, or none at all.</summary>
    public static bool TryRead(string text, Unit unit, out Quantity quantity) =>
        TryRead(text, out quantity) && quantity.Fits(unit);

    /// <summary>True for a bare unit such as <c>V</c>, <c>kohm</c>, <c>%</c>: what may follow a number after a blank.</summary>
    public static bool IsUnit(string text) => text.Length > 0 && UnitWords.TryRead(Plain(text), out _, out _, out _);

    private static string Plain(string text) =>
        text.Replace("\u00a0", "", StringComparison.Ordinal)
            .Replace("\u202f", "", StringComparison.Ordinal)
            .Replace(" ", "", StringComparison.Ordinal)
            .Replace('\u00b5', 'u')
            .Replace('\u03bc', 'u')
            .Replace("\u03a9", "ohm", StringComparison.Ordinal)
            .Replace("\u2126", "ohm", StringComparison.Ordinal)
            .Replace('\u2212', '-')
            .Replace("\u00b1", "", StringComparison.Ordinal)
            .Replace("+/-", "", StringComparison.Ordinal)
            .Replace("+-", "", StringComparison.Ordinal)
            .Replace("\u00bd", ".5", StringComparison.Ordinal)
            .Replace("\u00bc", ".25", StringComparison.Ordinal);

    /// <summary>IEC 60062: the letter stands for the decimal point (4k7, R47, 5V1).</summary>
    private static bool TryLetterAsPoint(string text, out Quantity quantity)
    {
        quantity = default;
        var match = LetterAsPoint().Match(text);
        if (!match.Success)
        {
            return false;
        }

        var (scale, unit) = Letter(match.Groups["letter"].Value);
        var tail = match.Groups["tail"].Value;
        if (tail.Length > 0)
        {
            if (unit != Unit.None || !UnitWords.TryRead(tail, out var tailScale, out unit, out _) || tailScale != 1)
            {
                return false;
            }
        }

        var digits = $"{match.Groups["sign"].Value}0{match.Groups["whole"].Value}.{match.Groups["part"].Value}";
        return TryFigure(digits, scale, unit, SpellingDoubt.None, out quantity);
    }

    private static (double Scale, Unit Unit) Letter(string letter) =>
        letter switch
        {
            "R" or "r" => (1, Unit.Ohm),
            "k" or "K" => (1e3, Unit.None),
            "M" => (1e6, Unit.None),
            "G" => (1e9, Unit.None),
            "m" => (1e-3, Unit.None),
            "u" or "U" => (1e-6, Unit.None),
            "n" => (1e-9, Unit.None),
            "p" => (1e-12, Unit.None),
            "V" => (1, Unit.Volt),
            "A" => (1, Unit.Ampere),
            "W" => (1, Unit.Watt),
            "F" => (1, Unit.Farad),
            _ => (1, Unit.Henry),
        };

    private static bool TryNumber(string text, out Quantity quantity)
    {
        quantity = default;
        var match = Number().Match(text);
        if (!match.Success || !UnitWords.TryRead(match.Groups["unit"].Value, out var scale, out var unit, out var doubt))
        {
            return false;
        }

        var number = match.Groups["number"].Value;
        if (ThousandsComma().IsMatch(number))
        {
            number = number.Replace(",", "", StringComparison.Ordinal);
            doubt = doubt == SpellingDoubt.None ? SpellingDoubt.ThousandsComma : doubt;
        }

        if (match.Groups["divisor"].Success)
        {
            if (!double.TryParse(match.Groups["divisor"].Value, CultureInfo.InvariantCulture, out var divisor) || divisor == 0)
            {
                return false;
            }

            scale /= divisor;
        }

        var digits = match.Groups["sign"].Value + number.Replace(',', '.') + match.Groups["power"].Value;
        return TryFigure(digits, scale, unit, doubt, out quantity);
    }

    // Dividing by the exact power of ten keeps 4.7n equal to 4.7e-9 to the last bit.
    private static bool TryFigure(string digits, double scale, Unit unit, SpellingDoubt doubt, out Quantity quantity)
    {
        quantity = default;
        if (!double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var figure))
        {
            return false;
        }

        var value = scale < 1 && scale > 0 ? figure / Math.Round(1 / scale, 6) : figure * scale;
        quantity = new Quantity(value, unit, doubt);
        return double.IsFinite(value);
    }

    [GeneratedRegex(
        @"^(?<sign>[+-]?)(?<whole>\d*)(?<letter>[RrkKMGmuUnpVAWFH])(?<part>\d+)(?<tail>[A-Za-z]*)$",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex LetterAsPoint();

    [GeneratedRegex(
        @"^(?<sign>[+-]?)(?<number>\d+(?:,\d{3})+(?:\.\d+)?|\d+(?:[.,]\d*)?|[.,]\d+)(?<power>[eE][+-]?\d{1,3})?(?:/(?<divisor>\d{1,3}))?(?<unit>[A-Za-z%~/]*)$",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Number();

    [GeneratedRegex(@"^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$", RegexOptions.CultureInvariant)]
    private static partial Regex ThousandsComma();
}
