using Slowglow.Quantities;
using Slowglow.Sheets.Setups;

namespace Slowglow.Sheets.Readings;

/// <summary>A probe, a setup, and what the meter said.</summary>
/// <param name="Value">Base units (V, A, ohm); the bound of a reading that only bounds; NaN without a figure.</param>
/// <param name="Text">The line as the technician wrote it.</param>
public sealed record Reading(Probe Probe, Setup Setup, MeterSaid Said, double Value, MeterClass Meter, string Text, Place Place)
{
    /// <summary>What was seen, smelt or felt, where no meter was used.</summary>
    public Look? Look { get; init; }

    /// <summary>What the same line says of a further place or part; null at its end.</summary>
    public Reading? Also { get; init; }

    /// <summary>Later called a mistake: it is kept with its line and counts no more.</summary>
    public bool IsMistake { get; init; }

    /// <summary>What was said where that is not a plain figure: "OL", "above 600 V", "unstable", "no signal", "burnt"; null for a figure.</summary>
    public string? Shown =>
        Said switch
        {
            MeterSaid.Value => null,
            MeterSaid.Overload => "OL",
            MeterSaid.Above => "above " + Figure,
            MeterSaid.Below => "below " + Figure,
            MeterSaid.Unstable => double.IsNaN(Value) ? "unstable" : "unstable, about " + Figure,
            MeterSaid.Signal => "signal",
            MeterSaid.WeakSignal => "weak signal",
            MeterSaid.NoSignal => "no signal",
            _ => Look is { } look ? LookWords.Say(look) : "",
        };

    private string Figure => Engineering.Format(Value, Probe.Unit);

    /// <summary>This reading and all that its line says besides, each by itself.</summary>
    public IEnumerable<Reading> Each()
    {
        for (var reading = this; reading is not null; reading = reading.Also)
        {
            yield return reading.Also is null ? reading : reading with { Also = null };
        }
    }
}
