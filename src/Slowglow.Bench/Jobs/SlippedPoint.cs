using Slowglow.Bench.Questions;
using Slowglow.Sheets.Readings;

namespace Slowglow.Bench.Jobs;

/// <summary>Whether a figure looks like the right one with its point, or a prefix, slipped. Worth one question, never a correction.</summary>
public static class SlippedPoint
{
    /// <summary>A point one or two places off, or milli and kilo taken for one another.</summary>
    private static readonly double[] Slips = [10, 0.1, 1000, 1e-3, 100, 0.01];

    /// <summary>A figure this many half-bands off is strange enough to ask.</summary>
    private const double Strange = 3;

    /// <summary>The line that would have been right, or null when nothing looks slipped.</summary>
    /// <param name="belongs">What a healthy unit shows at the same point in the same setup.</param>
    public static string? Meant(Reading reading, Expectation? belongs)
    {
        if (reading is not { Said: MeterSaid.Value, Also: null, Probe.Kind: not ProbeKind.Look } || belongs is null)
        {
            return null;
        }

        var half = (belongs.High - belongs.Low) / 2;
        if (!double.IsFinite(half) || Math.Abs(reading.Value - belongs.Nominal) < Strange * half || reading.Value == 0)
        {
            return null;
        }

        foreach (var slip in Slips.Where(s => In(reading.Value * s)))
        {
            return LineToType.Of(reading.Probe, reading.Setup).With(reading.Value * slip);
        }

        return null;

        bool In(double value) => value >= belongs.Low && value <= belongs.High;
    }
}
