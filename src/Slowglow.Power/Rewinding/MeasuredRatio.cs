namespace Slowglow.Power.Rewinding;

/// <summary>Volts of one winding over volts of another, &gt; 0.</summary>
public sealed record MeasuredRatio(string First, string Second, double Ratio);
