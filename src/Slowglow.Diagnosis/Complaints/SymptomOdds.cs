using Slowglow.Diagnosis.Likelihood;

namespace Slowglow.Diagnosis.Complaints;

/// <summary>
/// How likely a customer is to use a word of a channel that sounds like this. Soft steps: common practice, no source. Floors keep one
/// misheard word from killing a suspect.
/// </summary>
internal static class SymptomOdds
{
    /// <summary>A world that gives no figures says nothing for or against.</summary>
    private const double Unknown = 0.3;

    /// <summary>Probability of the word, 0.03 to 0.97.</summary>
    public static double Of(Descriptor descriptor, Symptoms s)
    {
        if (!s.Settled)
        {
            return Unknown;
        }
        return descriptor switch
        {
            Descriptor.Quiet => Soft(0.03, SoftStep.At(s.DropDb, 3.5, 1.2) * SoftStep.At(-s.DropDb, -38, 4)),
            Descriptor.Silent => Soft(0.02, SoftStep.At(s.DropDb, 26, 4)),
            Descriptor.Loud => Soft(0.03, SoftStep.At(-s.DropDb, 3, 1.2)),
            Descriptor.Thin => Soft(
                0.04,
                Math.Max(Bass(s), 0.7 * SoftStep.At(s.DropDb, 3, 1.2) * SoftStep.At(-s.DropDb, -30, 4))
            ),
            Descriptor.Dull => Soft(0.04, Heard(s) * SoftStep.At(s.TrebleDropDb, 4, 1.5)),
            Descriptor.Rough => Soft(0.03, Rough(s)),
            Descriptor.Crossover or Descriptor.OneSided => Soft(0.04, 0.5 * Rough(s)),
            Descriptor.Hum or Descriptor.Buzz or Descriptor.HumAtMains => Soft(0.03, SoftStep.At(s.HumRiseDb, 7, 2)),
            Descriptor.Offset => Soft(0.02, SoftStep.At(Math.Log(s.OffsetVolts + 1e-3), Math.Log(0.2), 0.5)),
            _ => Fine(s),
        };
    }

    /// <summary>Nothing to complain of.</summary>
    private static double Fine(Symptoms s)
    {
        var trouble = new[]
        {
            SoftStep.At(Math.Abs(s.DropDb), 4, 1.2),
            Rough(s),
            SoftStep.At(s.HumRiseDb, 9, 2),
            Heard(s) * SoftStep.At(Math.Abs(s.BassDropDb), 6, 1.5),
            Heard(s) * SoftStep.At(Math.Abs(s.TrebleDropDb), 6, 1.5),
            SoftStep.At(Math.Log(s.OffsetVolts + 1e-3), Math.Log(0.5), 0.5),
        };
        return Soft(0.04, trouble.Aggregate(1.0, (p, t) => p * (1 - t)));
    }

    private static double Bass(Symptoms s) => Heard(s) * SoftStep.At(s.BassDropDb, 4, 1.5);

    /// <summary>Twice the healthy distortion and more than a few per cent, in what can still be heard.</summary>
    private static double Rough(Symptoms s)
    {
        var threshold = Math.Max(0.04, 2 * s.HealthyDistortion);
        return Heard(s) * SoftStep.At(Math.Log(Math.Max(s.Distortion, 1e-6)), Math.Log(threshold), 0.3);
    }

    private static double Heard(Symptoms s) => SoftStep.At(-s.DropDb, -32, 4);

    private static double Soft(double floor, double chance) => floor + (0.97 - floor) * chance;
}
