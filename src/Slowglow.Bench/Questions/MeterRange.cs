using Slowglow.Sheets.Readings;

namespace Slowglow.Bench.Questions;

/// <summary>How a meter is set for a reading, in words.</summary>
internal static class MeterRange
{
    /// <summary>Ranges of a handheld meter with 2,000 counts, volts: common practice, no source.</summary>
    private static readonly (double Volts, string Words)[] VoltRanges =
    [
        (0.2, "200 mV"),
        (2, "2 V"),
        (20, "20 V"),
        (200, "200 V"),
        (double.PositiveInfinity, "1000 V"),
    ];

    /// <param name="most">The highest figure to be expected there, base units; NaN when there is none.</param>
    public static string Say(Probe probe, double most) =>
        probe switch
        {
            { IsInlet: true } => "inlet amperes ac",
            { Kind: ProbeKind.Look } => "look at it",
            { Kind: ProbeKind.Ohm } => "ohms, power off",
            { Kind: ProbeKind.Diode } => "diode test, power off",
            { Kind: ProbeKind.Dc } => "V dc" + Range(most),
            { Kind: ProbeKind.Ac } => (probe.SaidAsRipple ? "V ac, ripple" : "V ac") + Range(most),
            _ => $"V ac at {probe.KindText}" + Range(most),
        };

    private static string Range(double most) =>
        double.IsFinite(most) ? $", {VoltRanges.First(r => Math.Abs(most) < r.Volts).Words} range" : "";
}
