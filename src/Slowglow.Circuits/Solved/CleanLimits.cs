using System.Collections.Concurrent;
using Slowglow.Circuits.Building;

namespace Slowglow.Circuits.Solved;

/// <summary>Finds the drive at which a world reaches 5 % distortion; keeps what it found. Thread-safe.</summary>
internal sealed class CleanLimits(SignalFollower follower)
{
    private const double Allowed = 0.05;
    private const int Coarse = 24;
    private const double Ratio = 1.6;
    private readonly ConcurrentDictionary<(WorldState, string), CleanLimit> found = new();

    public CleanLimit Of(WorldState world, Fixtures.PathFixture path, CancellationToken cancel) =>
        found.GetOrAdd((world, path.Path.Name), _ => Search(world, path, cancel));

    private CleanLimit Search(WorldState world, Fixtures.PathFixture path, CancellationToken cancel)
    {
        var lowest = path.Path.LevelVolts / 100;
        double[] ladder = [.. Enumerable.Range(0, Coarse).Select(k => lowest * Math.Pow(Ratio, k))];
        var best = new CleanLimit(double.NaN, double.NaN, double.NaN);
        var above = Pick(world, path, ladder, ref best, cancel);
        if (double.IsNaN(best.OutputVolts) || above is null)
        {
            return best;
        }

        for (var round = 0; round < 2 && above is not null; round++)
        {
            var (low, high) = (best.GeneratorVolts, above.Value);
            double[] between = [.. Enumerable.Range(1, 4).Select(k => low * Math.Pow(high / low, k / 5.0))];
            above = Pick(world, path, between, ref best, cancel) ?? high;
        }

        return best;
    }

    /// <summary>Takes the last clean rung below the first that is not; returns that one, or null when all are clean.</summary>
    private double? Pick(
        WorldState world,
        Fixtures.PathFixture path,
        double[] rungs,
        ref CleanLimit best,
        CancellationToken cancel
    )
    {
        var results = follower.Large([.. rungs.Select(v => (world, v))], path, cancel);
        for (var k = 0; k < rungs.Length; k++)
        {
            var (volts, distortion) = results[k];
            if (!(distortion < Allowed))
            {
                return rungs[k];
            }

            best = new CleanLimit(volts, rungs[k], distortion);
        }

        return null;
    }
}
