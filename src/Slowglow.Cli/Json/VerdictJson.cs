using Slowglow.Diagnosis;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Cli.Json;

/// <summary>A reading beside what belongs there. Value is null and overload true when the meter showed overload; Said is what was said instead of a plain figure.</summary>
internal sealed record VerdictJson(
    string Where,
    string Kind,
    object Setup,
    double Value,
    bool Overload,
    double Nominal,
    double Low,
    double High,
    string Unit,
    string Word,
    string? Said
)
{
    public static VerdictJson From(ReadingVerdict v, IReadOnlyList<Setup> known) =>
        new(
            v.Reading.Probe.Where,
            v.Reading.Probe.KindText,
            SetupJson.From(v.Reading.Setup, known),
            v.Reading.Value,
            v.Reading.Said == MeterSaid.Overload,
            v.Nominal,
            v.Low,
            v.High,
            v.Reading.Probe.Unit,
            v.Word,
            v.Reading.Shown
        );
}
