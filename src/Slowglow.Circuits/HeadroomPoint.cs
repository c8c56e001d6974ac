namespace Slowglow.Circuits;

/// <summary>Largest undistorted signal of a channel at a frequency.</summary>
/// <param name="Hertz">The frequency.</param>
/// <param name="GeneratorVolts">Generator level, volts rms.</param>
/// <param name="OutputVolts">Output, volts rms.</param>
/// <param name="Slews">The op-amp whose slew rate sets it; null where it is what clips at 1 kHz, taken to do so at the same output.</param>
public sealed record HeadroomPoint(double Hertz, double GeneratorVolts, double OutputVolts, string? Slews);
