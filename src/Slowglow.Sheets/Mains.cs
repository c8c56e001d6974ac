namespace Slowglow.Sheets;

/// <summary>The mains the unit is strapped for.</summary>
/// <param name="Volts">Rms, nominal.</param>
/// <param name="Frequency">Hertz.</param>
/// <param name="Tolerance">Fraction: 0.06 for 6 %.</param>
public sealed record Mains(double Volts, double Frequency, double Tolerance);
