namespace Slowglow.Circuits;

/// <summary>The largest clean output of a channel.</summary>
/// <param name="OutputVolts">Volts rms at 1 kHz just below 5 % distortion; NaN when the world passes no signal.</param>
/// <param name="GeneratorVolts">Open-circuit generator level for it, volts rms.</param>
/// <param name="Distortion">Distortion there, 0 to 1.</param>
public readonly record struct CleanLimit(double OutputVolts, double GeneratorVolts, double Distortion);
