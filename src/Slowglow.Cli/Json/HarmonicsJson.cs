using Slowglow.Circuits;

namespace Slowglow.Cli.Json;

/// <summary>Fundamental at the output for a generator level, volts rms; second to tenth harmonic over the fundamental.</summary>
internal sealed record HarmonicsJson(double Input, double Level, double Distortion, IReadOnlyList<double> Harmonics)
{
    public static HarmonicsJson From(HarmonicContent c) => new(c.GeneratorVolts, c.OutputVolts, c.Distortion, c.Harmonics);
}
