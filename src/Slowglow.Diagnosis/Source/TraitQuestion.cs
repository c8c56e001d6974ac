using Slowglow.Circuits;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Source;

/// <summary>Asks a solved world for one trait of its sound.</summary>
internal sealed class TraitQuestion(Worlds worlds, Setup setup, string channel)
{
    /// <summary>Generator levels over the healthy clean limit: a soft signal and half the limit.</summary>
    private const double Soft = 0.05;
    private const double Loud = 0.5;

    public SoundTraits Ask(IReadOnlyList<Fault> faults, Trait trait, CancellationToken cancel)
    {
        var world = worlds.World(setup, faults, cancel);
        if (!world.Settled)
        {
            return new();
        }
        return trait switch
        {
            Trait.HumTones => world.Hum(channel) is { } hum
                ? new() { MainVolts = hum.MainVolts, TwiceVolts = hum.TwiceVolts }
                : new(),
            Trait.Noise => new() { NoiseVolts = world.Noise(channel: channel)?.Volts ?? double.NaN },
            Trait.Loop => new()
            {
                ReturnDifference = world
                    .Stability(channel)
                    .Select(l => l.Latches || l.PhaseMarginDegrees < 0 ? 0 : l.SmallestReturnDifference)
                    .DefaultIfEmpty(double.PositiveInfinity)
                    .Min(),
            },
            _ => Shape(world, cancel),
        };
    }

    private SoundTraits Shape(World world, CancellationToken cancel)
    {
        var limit = worlds.CleanLimit(setup, [], channel).GeneratorVolts;
        if (!double.IsFinite(limit))
        {
            return new();
        }
        var heard = world.Harmonics([Soft * limit, Loud * limit], channel, cancel);
        if (heard.Count < 2 || heard[0] is not { } soft || heard[1] is not { } loud)
        {
            return new();
        }
        var even = Math.Sqrt(loud.Harmonics.Where((_, k) => k % 2 == 0).Sum(x => x * x));
        return new()
        {
            SoftDistortion = soft.Distortion,
            LoudDistortion = loud.Distortion,
            EvenShare = loud.Distortion > 0 ? even / loud.Distortion : 0,
        };
    }
}
