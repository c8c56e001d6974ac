using Slowglow.Solving;

namespace Slowglow.Tests.Solving;

/// <summary>A world started from a settled relative comes to the same rest as one started from nothing.</summary>
public sealed class RestReferenceTests
{
    private const int Circuits = 60;

    [Fact]
    public void Relatives_rest_where_strangers_do()
    {
        var random = new Random(20);
        var (compared, atOnce) = (0, 0);
        for (var n = 0; n < Circuits; n++)
        {
            var network = RandomNetwork.Make(random, nonlinear: n % 3 != 0);
            var start = new double[network.Equations.Unknowns];
            var healthy = new StaticProblem { Slots = network.Slots, Start = start };
            new StaticSolver(network.Equations).Solve([healthy]);
            if (RestReference.Of(network.Equations, healthy) is not { } reference)
            {
                continue;
            }

            List<double[]> changed = [.. Enumerable.Range(0, 9).Select(_ => network.Failed(random)), network.Slots];
            var strangers = changed.Select(s => new StaticProblem { Slots = s, Start = start }).ToList();
            var relatives = changed.Select(s => new StaticProblem { Slots = s, Start = start, Relative = reference }).ToList();
            new StaticSolver(network.Equations).Solve(strangers);
            new StaticSolver(network.Equations).Solve(relatives);
            foreach (var (stranger, relative) in strangers.Zip(relatives).Where(p => p.First.Settled && p.Second.Settled))
            {
                compared++;
                atOnce += relative.Steps == 1 ? 1 : 0;
                for (var r = 0; r < start.Length; r++)
                {
                    Assert.Equal(stranger.Solution[r], relative.Solution[r], 1e-6 + (1e-5 * Math.Abs(stranger.Solution[r])));
                }
            }
        }

        Assert.InRange(compared, 8 * Circuits, 10 * Circuits);
        Assert.True(atOnce > Circuits, "No world was known to first order.");
    }
}
