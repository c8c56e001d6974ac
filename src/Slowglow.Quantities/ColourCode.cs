namespace Slowglow.Quantities;

/// <summary>Colour bands of resistors, IEC 60062: two or three digits, a multiplier, and a tolerance.</summary>
public static class ColourCode
{
    private static readonly string[] Digits =
    [
        "black",
        "brown",
        "red",
        "orange",
        "yellow",
        "green",
        "blue",
        "violet",
        "grey",
        "white",
    ];

    private static readonly (string Colour, int Power)[] Small = [("gold", -1), ("silver", -2), ("pink", -3)];

    /// <summary>Grey is read as 0.05 %, older practice: its sources differ.</summary>
    private static readonly (string Colour, double Tolerance)[] Tolerances =
    [
        ("brown", 0.01),
        ("red", 0.02),
        ("gold", 0.05),
        ("silver", 0.1),
        ("green", 0.005),
        ("blue", 0.0025),
        ("violet", 0.001),
        ("orange", 0.0005),
        ("grey", 0.0005),
        ("yellow", 0.0002),
    ];

    /// <summary>Every colour that can be a band.</summary>
    public static IReadOnlyList<string> Colours { get; } = [.. Digits, "gold", "silver", "pink"];

    /// <summary>Reads three bands (20 %), four, or five; a sixth, the temperature coefficient, is passed over. Null when they are no value.</summary>
    public static (double Ohms, double Tolerance)? Read(IReadOnlyList<string> bands)
    {
        var digits = bands.Count >= 5 ? 3 : 2;
        if (bands.Count is < 3 or > 6)
        {
            return null;
        }

        var figure = 0;
        foreach (var band in bands.Take(digits))
        {
            var digit = Array.IndexOf(Digits, band);
            if (digit < 0)
            {
                return null;
            }

            figure = (10 * figure) + digit;
        }

        var tolerance = bands.Count == 3 ? 0.2 : ToleranceOf(bands[digits + 1]);
        return PowerOf(bands[digits]) is { } power && tolerance is { } part && figure > 0
            ? (figure * Math.Pow(10, power), part)
            : null;
    }

    /// <summary>Four bands where two digits hold the value, else five; null when three digits do not hold it or no colour says the tolerance.</summary>
    public static IReadOnlyList<string>? Write(double ohms, double tolerance)
    {
        var last = Tolerances.Where(t => Math.Abs(t.Tolerance - tolerance) < 1e-9).Select(t => t.Colour).FirstOrDefault();
        if (last is null || !(ohms > 0) || !double.IsFinite(ohms))
        {
            return null;
        }

        foreach (var count in new[] { 2, 3 })
        {
            var power = (int)Math.Floor(Math.Log10(ohms) + 1e-9) - (count - 1);
            var figure = Math.Round(ohms / Math.Pow(10, power));
            var holds = Math.Abs(figure * Math.Pow(10, power) / ohms - 1) < 1e-6;
            if (holds && ColourOf(power) is { } multiplier)
            {
                var digits = ((int)figure).ToString(System.Globalization.CultureInfo.InvariantCulture);
                return [.. digits.Select(d => Digits[d - '0']), multiplier, last];
            }
        }

        return null;
    }

    private static int? PowerOf(string band)
    {
        var digit = Array.IndexOf(Digits, band);
        return digit >= 0 ? digit : Small.Where(s => s.Colour == band).Select(s => (int?)s.Power).FirstOrDefault();
    }

    private static string? ColourOf(int power) =>
        power is >= 0 and <= 9 ? Digits[power] : Small.Where(s => s.Power == power).Select(s => s.Colour).FirstOrDefault();

    private static double? ToleranceOf(string band) =>
        Tolerances.Where(t => t.Colour == band).Select(t => (double?)t.Tolerance).FirstOrDefault();
}
