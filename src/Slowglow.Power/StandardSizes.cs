namespace Slowglow.Power;

/// <summary>Sizes that parts are sold in.</summary>
public static class StandardSizes
{
    private static readonly double[] E12 = [1, 1.2, 1.5, 1.8, 2.2, 2.7, 3.3, 3.9, 4.7, 5.6, 6.8, 8.2, 10];

    /// <summary>Ratings of resistors, watts (common practice, no source).</summary>
    private static readonly double[] Watts = [0.125, 0.25, 0.5, 1, 2, 3, 5, 7, 10, 15, 20, 25, 50, 100, 200];

    /// <summary>Rated volts of aluminium electrolytics (reference/capacitor_voltage_ratings.csv).</summary>
    private static readonly double[] Electrolytic = [4, 6.3, 10, 16, 25, 35, 40, 50, 63, 100, 160, 200, 250, 350, 400, 450, 500];

    /// <summary>Rated volts of film capacitors (common practice, no source).</summary>
    private static readonly double[] Film = [50, 63, 100, 160, 250, 400, 630, 1000, 1600, 2000];

    /// <summary>The largest E12 value that is not above; the value must be &gt; 0.</summary>
    public static double E12AtMost(double value)
    {
        var decade = Math.Pow(10, Math.Floor(Math.Log10(value)));
        return E12.Last(e => e * decade <= value * (1 + 1e-9)) * decade;
    }

    /// <summary>The smallest rating not below; infinity beyond the largest sold.</summary>
    public static double WattsFor(double watts) => AtLeast(Watts, watts);

    public static double ElectrolyticVoltsFor(double volts) => AtLeast(Electrolytic, volts);

    public static double FilmVoltsFor(double volts) => AtLeast(Film, volts);

    private static double AtLeast(double[] sizes, double value) => sizes.FirstOrDefault(s => s >= value, double.PositiveInfinity);
}
