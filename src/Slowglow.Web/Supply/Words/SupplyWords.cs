using Slowglow.Quantities;

namespace Slowglow.Web.Supply.Words;

/// <summary>Figures and words of the pages about the supply.</summary>
public static class SupplyWords
{
    private const double Minutes = 60;
    private const double Hours = 3600;
    private const double Days = 86400;

    /// <summary>"62 %", "0.4 %", "under 0.1 %"; a dash without a figure.</summary>
    public static string Share(double share) =>
        share switch
        {
            double.NaN => "-",
            >= 0.0995 => FormattableString.Invariant($"{Math.Round(share * 100):0} %"),
            >= 0.001 => FormattableString.Invariant($"{share * 100:0.0} %"),
            _ => "under 0.1 %",
        };

    /// <summary>"at once", "85 ms", "42 s", "5.1 min", "3 h", "9 days", "longer than a month"; a dash without a figure.</summary>
    public static string Time(double seconds) =>
        seconds switch
        {
            double.NaN => "-",
            double.PositiveInfinity => "longer than a month",
            0 => "at once",
            < 2 * Minutes => Engineering.Format(seconds, "s", 2),
            < 2 * Hours => Engineering.Format(seconds / Minutes, "", 2) + " min",
            < 2 * Days => Engineering.Format(seconds / Hours, "", 2) + " h",
            _ => Engineering.Format(seconds / Days, "", 2) + " days",
        };

    /// <summary>How a lamp looks by the share of its light (common practice, no source).</summary>
    public static string Lamp(double light) =>
        light switch
        {
            double.NaN => "",
            < 1e-4 => "dark",
            < 5e-3 => "a faint glow",
            < 0.08 => "dull red",
            < 0.4 => "half bright",
            _ => "bright",
        };

    /// <summary>As a meter shows it: nothing below its finest step.</summary>
    public static string Shown(double value, string unit, int digits = 3)
    {
        var finest = unit switch
        {
            "V" => 1e-4,
            "A" => 1e-5,
            _ => 0.1,
        };
        return double.IsFinite(value)
            ? Engineering.Format(Math.Abs(value) < 1000 * finest ? Math.Round(value / finest) * finest : value, unit, digits)
            : "-";
    }

    /// <summary>"168 V to 194 V"; empty without edges.</summary>
    public static string Band(double low, double high, string unit) =>
        double.IsFinite(low) && double.IsFinite(high) ? $"{Shown(low, unit)} to {Shown(high, unit)}" : "";
}
