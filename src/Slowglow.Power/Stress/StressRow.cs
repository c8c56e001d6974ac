namespace Slowglow.Power.Stress;

/// <summary>The most that a part stands of one kind.</summary>
/// <param name="Part">Designator, with the winding where there are several.</param>
/// <param name="Description">What one would order.</param>
/// <param name="What">"heat", "volts", "current", "ripple current".</param>
/// <param name="Unit">"W", "V" or "A".</param>
/// <param name="Value">Largest over the situations.</param>
/// <param name="Situation">In which it comes.</param>
/// <param name="Rated">By the sheet or the device; NaN when unknown.</param>
/// <param name="Needed">Rating to fit, of a standard size; NaN when nothing can be said.</param>
public sealed record StressRow(
    string Part,
    string Description,
    string What,
    string Unit,
    double Value,
    string Situation,
    double Rated,
    double Needed
)
{
    /// <summary>Over the rating; NaN when that is unknown.</summary>
    public double Ratio => Value / Rated;

    public bool IsOver => Ratio > 1;
}
