using System.Globalization;

namespace Slowglow.Quantities;

/// <summary>Engineering notation for people: 181 V, 1.2 mA, 4.7 kohm; and the drawing's own style: 4k7.</summary>
public static class Engineering
{
    private static readonly (double Scale, string Prefix)[] Prefixes =
    [
        (1e9, "G"),
        (1e6, "M"),
        (1e3, "k"),
        (1, ""),
        (1e-3, "m"),
        (1e-6, "µ"),
        (1e-9, "n"),
        (1e-12, "p"),
    ];

    private static readonly HashSet<string> TakePrefixes = ["V", "A", "ohm", "F", "H", "W", "VA", "Hz", "S", "s", "J"];

    /// <summary>
    /// Formats a value in base units with <paramref name="digits"/> significant digits (1 to 9), trailing zeros dropped.
    /// Units that take no prefix (%, times, min, dB) keep the figure as it is. Infinity reads "infinite", NaN "unknown".
    /// </summary>
    public static string Format(double value, string unit, int digits = 3)
    {
        var (figure, prefix) = Figure(value, digits, TakePrefixes.Contains(unit));
        return unit.Length == 0 ? figure + prefix : $"{figure} {prefix}{unit}";
    }

    /// <summary>As a drawing writes it: 4700 is <c>4k7</c>, 0.47 <c>R47</c>, 47 <c>47R</c>, 2.2e-9 <c>2n2</c>.</summary>
    /// <param name="value">Base units, &gt;= 0.</param>
    /// <param name="one">Letter when there is no prefix: "R" for resistors, "F", "H" ...</param>
    /// <param name="digits">Significant digits, 1 to 9.</param>
    public static string Drawing(double value, string one = "R", int digits = 3)
    {
        var rounded = double.IsFinite(value) ? Rounded(value, digits) : value;
        if (one == "R" && rounded is >= 0.01 and < 1)
        {
            return "R" + rounded.ToString("0.#########", CultureInfo.InvariantCulture)[2..];
        }

        var (figure, prefix) = Figure(value, digits, true);
        var letter =
            prefix.Length == 0 ? one
            : prefix == "µ" ? "u"
            : prefix;
        return figure.Contains('.', StringComparison.Ordinal)
            ? figure.Replace(".", letter, StringComparison.Ordinal)
            : figure + letter;
    }

    private static (string Figure, string Prefix) Figure(double value, int digits, bool prefixed)
    {
        if (double.IsNaN(value))
        {
            return ("unknown", "");
        }

        if (double.IsInfinity(value))
        {
            return (value > 0 ? "infinite" : "minus infinite", "");
        }

        var rounded = Rounded(value, digits);
        if (rounded == 0 || !prefixed)
        {
            return (Text(rounded, digits), "");
        }

        var size = Math.Abs(rounded);
        var (scale, prefix) = Prefixes.FirstOrDefault(p => size >= p.Scale * (1 - 1e-12), Prefixes[^1]);
        return (Text(Rounded(rounded / scale, digits), digits), prefix);
    }

    /// <summary>Rounded to significant digits; values the type cannot round further come back as they are.</summary>
    private static double Rounded(double value, int digits) =>
        value == 0
            ? 0
            : double.Parse(
                value.ToString(
                    "E" + (Math.Clamp(digits, 1, 9) - 1).ToString(CultureInfo.InvariantCulture),
                    CultureInfo.InvariantCulture
                ),
                CultureInfo.InvariantCulture
            );

    private static string Text(double value, int digits)
    {
        var size = Math.Abs(value);
        return size != 0 && (size >= 1e15 || size < 1e-6)
            ? value.ToString("G" + Math.Clamp(digits, 1, 9).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)
            : value.ToString("0.###############", CultureInfo.InvariantCulture);
    }
}
