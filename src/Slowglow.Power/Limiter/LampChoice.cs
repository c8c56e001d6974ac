namespace Slowglow.Power.Limiter;

/// <summary>How a limiter lamp does with a unit.</summary>
/// <param name="Watts">Rated, of all lamps side by side together.</param>
/// <param name="HealthyShare">Of its watts that it takes with the healthy unit behind it.</param>
/// <param name="HealthyLight">Of its light.</param>
/// <param name="ShortShare">Of its watts with a short behind the rectifier or across a winding.</param>
/// <param name="ShortLight">Of its light then.</param>
/// <param name="RailShare">What the first rail has left of its volts behind the lamp, healthy.</param>
public sealed record LampChoice(
    double Watts,
    double HealthyShare,
    double HealthyLight,
    double ShortShare,
    double ShortLight,
    double RailShare
)
{
    /// <summary>A short is plain when the lamp burns at most of its power and many times brighter than it should (common practice, no source).</summary>
    public bool TellsShort => ShortShare > 0.6 && ShortLight > 5 * HealthyLight;

    /// <summary>Enough is left for the unit to come alive (common practice, no source).</summary>
    public bool FeedsUnit => RailShare > 0.75;

    public bool Suits => TellsShort && FeedsUnit;
}
