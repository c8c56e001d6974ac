using Slowglow.Sheets.Readings;

namespace Slowglow.Power.PowerUp;

/// <summary>What one point should read in a step.</summary>
/// <param name="Probe">Where and what kind.</param>
/// <param name="Nominal">Base units; NaN when a meter shows overload or nothing certain.</param>
/// <param name="Low">Least that a healthy unit shows.</param>
/// <param name="High">Most.</param>
public sealed record PowerPoint(Probe Probe, double Nominal, double Low, double High)
{
    /// <summary>Less of what belongs there is nothing.</summary>
    private const double Nothing = 0.1;

    public string Unit => Probe.Unit;

    /// <summary>"dead", "short", "low" or "high"; null when a healthy unit might read so, or nothing is certain here.</summary>
    /// <param name="value">What a meter shows, base units.</param>
    public string? WordFor(double value)
    {
        if (!double.IsFinite(Nominal) || (value >= Low && value <= High))
        {
            return null;
        }

        var share = Math.Abs(value) / Math.Max(Math.Abs(Nominal), 1e-9);
        return share < Nothing && !Probe.IsInlet ? (Unit == "ohm" ? "short" : "dead")
            : Math.Abs(value) > Math.Abs(Nominal) ? "high"
            : "low";
    }

    /// <summary>The point and its word as signs are written: "HT1 dead", "lamp brighter"; null as <see cref="WordFor"/>.</summary>
    /// <param name="value">What a meter shows, base units.</param>
    /// <param name="lamp">True when a limiter lamp is in.</param>
    public string? LooksWith(double value, bool lamp) =>
        WordFor(value) is not { } word ? null
        : !Probe.IsInlet ? $"{Probe.Where} {word}"
        : (lamp, word) switch
        {
            (true, "high") => "lamp brighter",
            (true, _) => "lamp darker",
            (false, "high") => "inlet current high",
            _ => "inlet current low",
        };
}
