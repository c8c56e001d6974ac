using Slowglow.Circuits;
using Slowglow.Quantities;

namespace Slowglow.Web.Bench.Words;

/// <summary>Figures as a technician writes them.</summary>
public static class Figures
{
    /// <summary>"181 V"; a dash when there is no figure.</summary>
    public static string Value(double value, string unit, int digits = 3) =>
        double.IsFinite(value) ? Engineering.Format(value, unit, digits) : "-";

    /// <summary>"168 V to 195 V".</summary>
    public static string Band(double low, double high, string unit) =>
        double.IsFinite(low) && double.IsFinite(high)
            ? $"{Engineering.Format(low, unit)} to {Engineering.Format(high, unit)}"
            : "";

    /// <summary>What stands in the place of a figure.</summary>
    public static string Without(AnswerKind kind) =>
        kind switch
        {
            AnswerKind.Floating => "floating: held by nothing",
            AnswerKind.Overload => "OL",
            AnswerKind.Unsettled => "no figure: does not settle",
            AnswerKind.NotApplicable => "does not apply",
            _ => "",
        };

    /// <summary>"1 reading", "3 readings".</summary>
    public static string Count(int count, string what) =>
        count == 1 ? $"1 {what}" : FormattableString.Invariant($"{count} {what}s");

    /// <summary>"under a minute", "1 minute", "12 minutes".</summary>
    public static string Minutes(double minutes) =>
        minutes switch
        {
            < 0.75 => "under a minute",
            < 1.5 => "1 minute",
            _ => FormattableString.Invariant($"{Math.Round(minutes):0} minutes"),
        };
}
