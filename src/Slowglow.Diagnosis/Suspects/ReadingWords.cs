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

    public static string Value(Probe probe, Prediction prediction) =>
        prediction.Kind switch
        {
            AnswerKind.Value => Engineering.Format(Scale.Of(probe).From(prediction.Mean), probe.Unit),
            AnswerKind.Overload => "overload",
            AnswerKind.Floating => probe.Kind is ProbeKind.Ohm or ProbeKind.Diode
                ? "overload"
                : "next to nothing, for nothing holds it",
            _ => "no steady figure",
        };
}
