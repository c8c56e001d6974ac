using Slowglow.Circuits.Building;

namespace Slowglow.Circuits.Solved;

/// <summary>Distortion by harmonic at given levels.</summary>
internal static class HarmonicsQuestion
{
    private const int Highest = 10;

    public static IReadOnlyList<HarmonicContent?> Ask(
        AskedWorld asked,
        Fixtures.PathFixture path,
        IReadOnlyList<double> generatorVolts,
        CancellationToken cancel
    ) => [.. LoudSignal.At(asked, path, generatorVolts, cancel).Select(s => s is null || path.Out < 0 ? null : Of(s, path.Out))];

    private static HarmonicContent Of(LoudSignal signal, int output)
    {
        var fundamental = signal.Harmonic(output, 1).Magnitude;
        double[] harmonics =
        [
            .. Enumerable.Range(2, Highest - 1).Select(h => signal.Harmonic(output, h).Magnitude / fundamental),
        ];
        return new(signal.GeneratorVolts, fundamental, Math.Sqrt(harmonics.Sum(h => h * h)), harmonics);
    }
}
