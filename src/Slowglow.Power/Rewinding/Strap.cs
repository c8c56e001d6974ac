namespace Slowglow.Power.Rewinding;

/// <summary>How a primary is strapped for one mains voltage.</summary>
/// <param name="Volts">Mains, rms.</param>
/// <param name="InSeries">The halves one after the other; false = side by side.</param>
/// <param name="FirstTap">Volts of the tap used on the first half (and on the second when side by side).</param>
/// <param name="SecondTap">Volts of the tap used on the second half.</param>
public sealed record Strap(double Volts, bool InSeries, double FirstTap, double SecondTap);
