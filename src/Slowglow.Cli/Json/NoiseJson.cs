using Slowglow.Circuits;

namespace Slowglow.Cli.Json;

/// <summary>Noise at the output, volts rms over a band, signal to noise in decibels, and what each part adds.</summary>
internal sealed record NoiseJson(
    double LowFrequency,
    double HighFrequency,
    double Level,
    double SignalToNoise,
    IReadOnlyList<NoiseSourceJson> Sources
)
{
    private const int MostSources = 20;

    public static NoiseJson? From(NoiseFloor? n) =>
        n is null
            ? null
            : new(
                n.FromHertz,
                n.ToHertz,
                n.Volts,
                n.SignalToNoiseDecibels,
                [.. n.Sources.Take(MostSources).Select(s => new NoiseSourceJson(s.Part, WordOf(s.Kind), s.OutputVolts))]
            );

    private static string WordOf(NoiseKind kind) =>
        kind switch
        {
            NoiseKind.Thermal => "thermal",
            NoiseKind.Shot => "shot",
            _ => "op-amp",
        };
}
