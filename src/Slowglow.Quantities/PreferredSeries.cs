using System.Globalization;

namespace Slowglow.Quantities;

/// <summary>Preferred numbers of IEC 60063, E3 to E192.</summary>
public static class PreferredSeries
{
    private static readonly int[] E24 =
    [
        100,
        110,
        120,
        130,
        150,
        160,
        180,
        200,
        220,
        240,
        270,
        300,
        330,
        360,
        390,
        430,
        470,
        510,
        560,
        620,
        680,
        750,
        820,
        910,
    ];

    private static readonly int[] E192 = [.. Enumerable.Range(0, 192).Select(Finest)];

    // The rounded formula gives 919 at one place where the standard prints 920.
    private static int Finest(int step)
    {
        var formula = (int)Math.Round(100 * Math.Pow(10, step / 192.0), MidpointRounding.AwayFromZero);
        return formula == 919 ? 920 : formula;
    }

    /// <summary>Coarsest series that holds the value: 3, 6, 12, 24, 48, 96 or 192; null when none does. The value must be &gt; 0.</summary>
    public static int? SeriesOf(double value)
    {
        if (!(value > 0) || double.IsInfinity(value))
        {
            return null;
        }

        if (Significand(value) is not { } digits)
        {
            return null;
        }

        var coarse = Array.IndexOf(E24, digits);
        if (coarse >= 0)
        {
            return coarse % 8 == 0 ? 3
                : coarse % 4 == 0 ? 6
                : coarse % 2 == 0 ? 12
                : 24;
        }

        var fine = Array.IndexOf(E192, digits);
        return fine < 0 ? null
            : fine % 4 == 0 ? 48
            : fine % 2 == 0 ? 96
            : 192;
    }

    /// <summary>The nearest value of E24 by ratio. The value must be &gt; 0.</summary>
    public static double NearestE24(double value)
    {
        var decade = Math.Pow(10, Math.Floor(Math.Log10(value)) - 2);
        return E24.Append(1000).Select(n => n * decade).MinBy(n => Math.Abs(Math.Log(n / value)));
    }

    /// <summary>Three leading digits as a whole number 100 to 999; null when more than three are needed.</summary>
    private static int? Significand(double value)
    {
        var text = value.ToString("E6", CultureInfo.InvariantCulture);
        return text[4..8] == "0000" ? int.Parse(string.Concat(text[0], text[2], text[3]), CultureInfo.InvariantCulture) : null;
    }
}
