using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Quantities;

namespace Slowglow.Cli.Tables;

/// <summary>Figures as a technician writes them.</summary>
internal static class Figures
{
    /// <summary>"181 V"; "-" where there is no figure.</summary>
    public static string Say(double value, string unit, int digits = 3) =>
        double.IsFinite(value) ? Engineering.Format(value, unit, digits) : "-";

    /// <summary>The same as a meter shows it: nothing below its finest step.</summary>
    public static string Shown(double value, string unit)
    {
        var finest = unit switch
        {
            "V" => 1e-4,
            "A" => 1e-5,
            _ => 0.1,
        };
        return double.IsFinite(value)
            ? Say(Math.Abs(value) < 1000 * finest ? Math.Round(value / finest) * finest : value, unit)
            : "-";
    }

    /// <summary>The nominal value, or why there is none.</summary>
    public static string Nominal(Expectation e) =>
        e.Kind switch
        {
            AnswerKind.Value => Shown(e.Nominal, e.Unit),
            AnswerKind.Floating => "floating",
            AnswerKind.Overload => "OL",
            AnswerKind.Unsettled => "does not settle",
            _ => "-",
        };

    /// <summary>"168 V to 194 V".</summary>
    public static string Band(double low, double high, string unit) =>
        double.IsFinite(low) && double.IsFinite(high) ? $"{Shown(low, unit)} to {Shown(high, unit)}" : "";

    /// <summary>"62 %", "0.4 %", "under 0.1 %".</summary>
    public static string Percent(double share) =>
        share switch
        {
            >= 0.0995 => $"{Math.Round(share * 100)} %",
            >= 0.001 => FormattableString.Invariant($"{share * 100:0.0} %"),
            _ => "under 0.1 %",
        };
}
