using Slowglow.Sheets.Readings;

namespace Slowglow.Power.PowerUp;

/// <summary>What one point should read in a step.</summary>
/// <param name="Probe">Where and what kind.</param>
/// <param name="Nominal">Base units; NaN when a meter shows overload or nothing certain.</param>
/// <param name="Low">Least that a healthy unit shows.</param>
/// <param name="High">Most.</param>
public sealed record PowerPoint(Probe Probe, double Nominal, double Low, double High)
{
    public string Unit => Probe.Unit;
}
