using Slowglow.Circuits;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Quantities;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Suspects;

/// <summary>Says readings and predictions in a technician's words.</summary>
internal static class ReadingWords
{
    /// <summary>"V1.6 on slow"; the setup is named when it is not the first one.</summary>
    public static string Place(Reading reading, string firstSetup) =>
        (reading.Setup.Name == firstSetup ? reading.Probe.Where : $"{reading.Probe.Where} on {reading.Setup.Name}")
        + (reading.Probe.Kind == ProbeKind.Dc ? "" : $" ({reading.Probe.KindText})");

    public static string Value(Reading reading) =>
        reading.Said == MeterSaid.Overload ? "overload" : reading.Shown ?? Engineering.Format(reading.Value, reading.Probe.Unit);

    /// <summary>A predicted figure as a meter would show it: nothing below its last digits.</summary>
    public static string Value(Probe probe, double value) =>
        Math.Abs(value) < LeastShown(probe) ? "next to nothing" : Engineering.Format(value, probe.Unit);

    private static double LeastShown(Probe probe) =>
        probe switch
        {
            { IsInlet: true } => 1e-3,
            { Kind: ProbeKind.Ohm } => 0.2,
            { Kind: ProbeKind.Dc or ProbeKind.Diode } => 3e-3,
            _ => 3e-4,
        };

    public static string Value(Probe probe, Prediction prediction) =>
        prediction.Kind switch
        {
            AnswerKind.Value => Value(probe, Scale.Of(probe).From(prediction.Mean)),
            AnswerKind.Overload => "overload",
            AnswerKind.Floating => probe.Kind is ProbeKind.Ohm or ProbeKind.Diode
                ? "overload"
                : "next to nothing, for nothing holds it",
            _ => "no steady figure",
        };
}
