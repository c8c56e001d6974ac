namespace Slowglow.Circuits;

/// <summary>What one part adds to the noise at the output.</summary>
/// <param name="Part">Designator; "generator" or "load" for what the bench connects.</param>
/// <param name="Kind">Where it comes from.</param>
/// <param name="OutputVolts">At the output over the band, volts rms; sources add by squares.</param>
public readonly record struct NoiseSource(string Part, NoiseKind Kind, double OutputVolts);
