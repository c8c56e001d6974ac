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

    /// <summary>Volts nearer to nothing than a handheld meter shows: not worth a figure.</summary>
    private const double Nothing = 5e-3;

    /// <summary>True where a healthy unit has no volts to speak of: grids, inputs, outputs.</summary>
    public bool IsNothing =>
        Probe.Unit == "V"
        && Probe.Kind is ProbeKind.Dc or ProbeKind.Ac
        && !Probe.IsInlet
        && Math.Max(Math.Abs(Low), Math.Abs(High)) < Nothing;

    /// <summary>True when a person who types this into the filter means this row.</summary>
    public bool Matches(string filter) => Probe.Where.Contains(filter.Trim(), StringComparison.OrdinalIgnoreCase);
}
