namespace Slowglow.Circuits;

/// <summary>A large 1 kHz signal taken apart at the output.</summary>
/// <param name="GeneratorVolts">Open-circuit generator level, volts rms.</param>
/// <param name="OutputVolts">Fundamental at the output, volts rms.</param>
/// <param name="Distortion">Root of the sum of squares of the harmonics over the fundamental, 0 to 1 and beyond.</param>
/// <param name="Harmonics">Second to tenth, each over the fundamental.</param>
public sealed record HarmonicContent(
    double GeneratorVolts,
    double OutputVolts,
    double Distortion,
    IReadOnlyList<double> Harmonics
);
