using Slowglow.Circuits;

namespace Slowglow.Web.Bench.Words;

/// <summary>What a part stands, in a line: figures of which a rating is known first, each with its share of it.</summary>
internal static class Duty
{
    /// <summary>Less than this is nothing that wears a part.</summary>
    private const double Least = 1e-4;

    public static string Say(PartStress stress)
    {
        (double Value, string Unit, double Ratio)[] all =
        [
            (stress.Watts, "W", stress.WattsRatio),
            (stress.Volts, "V", stress.VoltsRatio),
            (stress.AmpsRms, "A", stress.AmpsRatio),
        ];
        var told = all.Where(s => s.Value > Least).OrderBy(s => double.IsNaN(s.Ratio) ? 1 : 0).Select(Say);
        return string.Join(", ", told);
    }

    private static string Say((double Value, string Unit, double Ratio) s) =>
        double.IsNaN(s.Ratio)
            ? Figures.Value(s.Value, s.Unit)
            : $"{Figures.Value(s.Value, s.Unit)} ({Figures.Value(100 * s.Ratio, "%", 2)} of its rating)";
}
