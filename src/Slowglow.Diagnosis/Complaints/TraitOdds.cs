using Slowglow.Diagnosis.Likelihood;
using Slowglow.Diagnosis.Source;

namespace Slowglow.Diagnosis.Complaints;

/// <summary>How likely a word is of a sound with these traits. Soft steps: common practice, no source.</summary>
internal static class TraitOdds
{
    /// <summary>Crossover is heard from this on, feedback notwithstanding.</summary>
    private const double CrossoverLeast = 0.003;

    /// <summary>Which trait a word rests on; null for those that need none.</summary>
    public static Trait? Of(Descriptor descriptor) =>
        descriptor switch
        {
            Descriptor.Buzz or Descriptor.HumAtMains => Trait.HumTones,
            Descriptor.Noise => Trait.Noise,
            Descriptor.Squeal => Trait.Loop,
            Descriptor.Crossover or Descriptor.OneSided => Trait.Shape,
            _ => null,
        };

    /// <summary>Factor on the chance of hum by its tone: ears mistake one for the other often enough. 0.3 to 1.</summary>
    public static double Tone(Descriptor descriptor, SoundTraits traits)
    {
        var all = traits.MainVolts + traits.TwiceVolts;
        if (!(all > 0))
        {
            return 0.7;
        }
        var share = (descriptor == Descriptor.Buzz ? traits.TwiceVolts : traits.MainVolts) / all;
        return 0.3 + 0.7 * SoftStep.At(share, 0.45, 0.1);
    }

    /// <summary>Chance of a word that the traits alone decide; null when they give no figure.</summary>
    public static double? Chance(Descriptor descriptor, SoundTraits now, SoundTraits healthy) =>
        descriptor switch
        {
            Descriptor.Noise when now.NoiseVolts > 0 && healthy.NoiseVolts > 0 => Soft(
                SoftStep.At(20 * Math.Log10(now.NoiseVolts / healthy.NoiseVolts), 6, 2)
            ),
            Descriptor.Squeal when !double.IsNaN(now.ReturnDifference) => now.ReturnDifference < 0.15
            && healthy.ReturnDifference > 0.2
                ? 0.7
                : 0.06,
            Descriptor.Crossover when now.SoftDistortion >= 0 => Soft(
                Rise(now.SoftDistortion, Math.Max(CrossoverLeast, 4 * healthy.SoftDistortion))
                    * (now.SoftDistortion > 0.5 * now.LoudDistortion ? 1 : 0.4)
            ),
            Descriptor.OneSided when now.LoudDistortion >= 0 => Soft(
                Rise(now.LoudDistortion, Math.Max(0.04, 2 * healthy.LoudDistortion)) * SoftStep.At(now.EvenShare, 0.65, 0.08)
            ),
            _ => null,
        };

    private static double Rise(double distortion, double threshold) =>
        SoftStep.At(Math.Log(Math.Max(distortion, 1e-6)), Math.Log(threshold), 0.3);

    private static double Soft(double chance) => 0.04 + 0.93 * chance;
}
