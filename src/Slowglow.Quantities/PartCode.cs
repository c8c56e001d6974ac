using System.Globalization;

namespace Slowglow.Quantities;

/// <summary>
/// Figure codes printed on parts: 104 on a capacitor is 10 with four noughts, in picofarads; 473 on a resistor is 47 kohm. A letter behind is the
/// tolerance by IEC 60062. Common practice for the three figures; the letters from IEC 60062.
/// </summary>
public static class PartCode
{
    private static readonly (char Letter, double Tolerance)[] Letters =
    [
        ('B', 0.001),
        ('C', 0.0025),
        ('D', 0.005),
        ('F', 0.01),
        ('G', 0.02),
        ('J', 0.05),
        ('K', 0.1),
        ('M', 0.2),
    ];

    /// <summary>Value in picofarads or ohms and tolerance (NaN when none is printed); null when it is no such code.</summary>
    public static (double Value, double Tolerance)? Read(string code)
    {
        var plain = code.Trim().ToUpperInvariant();
        var tolerance = double.NaN;
        if (plain.Length > 3 && char.IsAsciiLetter(plain[^1]))
        {
            var letter = Letters.Where(l => l.Letter == plain[^1]).Select(l => (double?)l.Tolerance).FirstOrDefault();
            if (letter is null)
            {
                return null;
            }

            (tolerance, plain) = (letter.Value, plain[..^1]);
        }

        if (plain.Length is not (3 or 4) || !plain.All(char.IsAsciiDigit) || plain[0] == '0')
        {
            return null;
        }

        // 8 and 9 in the last place of three mean a hundredth and a tenth.
        var power = plain[^1] - '0';
        var figure = int.Parse(plain[..^1], CultureInfo.InvariantCulture);
        var small = plain.Length == 3 && power >= 8;
        return (figure * Math.Pow(10, small ? power - 10 : power), tolerance);
    }

    /// <summary>Three figures for a value in picofarads or ohms; null when two digits do not hold it.</summary>
    public static string? Write(double value)
    {
        if (!(value >= 1) || value > 99e7)
        {
            return null;
        }

        var power = (int)Math.Floor(Math.Log10(value) + 1e-9) - 1;
        var figure = Math.Round(value / Math.Pow(10, power));
        return Math.Abs((figure * Math.Pow(10, power) / value) - 1) > 1e-6 ? null
            : power == -1 ? FormattableString.Invariant($"{figure}9")
            : FormattableString.Invariant($"{figure}{power}");
    }
}
