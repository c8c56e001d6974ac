using Slowglow.Bench.Jobs;
using Slowglow.Circuits;
using Slowglow.Sheets.Readings;

namespace Slowglow.Web.Bench;

/// <summary>A line of the table of points: what belongs there and, once measured, what the meter said.</summary>
/// <param name="OtherSetup">Name of the setup when it is not the one the bench stands in.</param>
/// <param name="Measured">Null when nothing was measured there.</param>
/// <param name="Word">"as expected", "far too low"; empty when nothing was measured.</param>
public sealed record PointRow(
    Probe Probe,
    AnswerKind Kind,
    double Nominal,
    double Low,
    double High,
    string? OtherSetup,
    StandingReading? Measured,
    string Word
)
{
    /// <summary>low, high, good or none: for the colour beside the word.</summary>
    public string Tone =>
        Word switch
        {
            "" => "none",
            _ when Word.Contains("low", StringComparison.Ordinal) => "low",
            _ when Word.Contains("high", StringComparison.Ordinal) => "high",
            "as expected" => "good",
            _ => "none",
        };

    /// <summary>True when a person who types this into the filter means this row.</summary>
    public bool Matches(string filter) => Probe.Where.Contains(filter.Trim(), StringComparison.OrdinalIgnoreCase);
}
