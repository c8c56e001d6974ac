using System.Globalization;

namespace Slowglow.Web.Bench.Words;

/// <summary>Probabilities in words and as a figure.</summary>
public static class Chances
{
    /// <summary>"almost certain", "likely", "possible" ...</summary>
    public static string Say(double probability) =>
        probability switch
        {
            >= 0.95 => "almost certain",
            >= 0.75 => "very likely",
            >= 0.5 => "likely",
            >= 0.2 => "possible",
            >= 0.05 => "less likely",
            _ => "unlikely",
        };

    /// <summary>"62 %"; "under 1 %" and "over 99 %" at the ends.</summary>
    public static string Figure(double probability) =>
        probability switch
        {
            < 0.005 => "under 1 %",
            > 0.995 => "over 99 %",
            _ => Math.Round(probability * 100).ToString("0", CultureInfo.InvariantCulture) + " %",
        };

    /// <summary>Length of a bar, 0 to 100.</summary>
    public static string Bar(double probability) =>
        Math.Clamp(probability * 100, 0.5, 100).ToString("0.0", CultureInfo.InvariantCulture);
}
