using Slowglow.Diagnosis.Likelihood;

namespace Slowglow.Diagnosis.Complaints;

/// <summary>
/// What a customer would hardly have left out: a channel that is dead, loud hum, gross distortion. Whoever says "thin" of a channel that is
/// in fact silent is rare. Weights are common practice, no source; faint trouble that nobody mentions says nothing.
/// </summary>
internal static class Unsaid
{
    /// <summary>Share of customers who mention a dead channel, loud hum, gross distortion beside what they came for.</summary>
    private const double NamesSilence = 0.85;
    private const double NamesHum = 0.6;
    private const double NamesRoughness = 0.5;

    private static readonly Descriptor[] OfLevel =
    [
        Descriptor.Quiet,
        Descriptor.Silent,
        Descriptor.Loud,
        Descriptor.Thin,
        Descriptor.Intermittent,
    ];
    private static readonly Descriptor[] OfHum =
    [
        Descriptor.Hum,
        Descriptor.Buzz,
        Descriptor.HumAtMains,
        Descriptor.Noise,
        Descriptor.Motorboating,
        Descriptor.Squeal,
    ];
    private static readonly Descriptor[] OfSound =
    [
        Descriptor.Rough,
        Descriptor.Crossover,
        Descriptor.OneSided,
        Descriptor.Crackle,
        Descriptor.Thin,
        Descriptor.Dull,
    ];

    /// <summary>Chance that a channel which sounds like this is brought in with these words and no others, 0.03 to 1.</summary>
    public static double Chance(IReadOnlyCollection<Descriptor> said, Symptoms s)
    {
        // A dead unit is complained of as dead, and nothing else is heard of it.
        if (
            !s.Settled
            || said.Contains(Descriptor.Silent)
            || said.Contains(Descriptor.NoPower)
            || said.Contains(Descriptor.BlowsFuse)
        )
        {
            return 1;
        }

        var heard = 1 - SoftStep.At(s.DropDb, 32, 4);
        return Left(said, OfLevel, NamesSilence * SoftStep.At(s.DropDb, 26, 4))
            * Left(said, OfHum, NamesHum * SoftStep.At(s.HumRiseDb, 20, 3))
            * Left(said, OfSound, NamesRoughness * heard * Roughness(s));
    }

    private static double Left(IReadOnlyCollection<Descriptor> said, Descriptor[] words, double named) =>
        words.Any(said.Contains) ? 1 : 1 - named;

    private static double Roughness(Symptoms s) =>
        SoftStep.At(Math.Log(Math.Max(s.Distortion, 1e-6)), Math.Log(Math.Max(0.15, 4 * s.HealthyDistortion)), 0.3);
}
