using CsCheck;
using Slowglow.Solving;

namespace Slowglow.Tests.Solving;

/// <summary>Laws of linear networks (superposition, reciprocity: Helmholtz 1853, Rayleigh 1873; textbook) on random ones.</summary>
public sealed class LinearLawTests
{
    [Fact]
    public void Sources_together_do_what_they_do_one_by_one()
    {
        LinearNetwork.Any.Sample(
            network =>
            {
                List<StaticProblem> all =
                [
                    network.With(_ => true),
                    .. network.Sources.Select((_, s) => network.With(other => other == s)),
                ];
                new StaticSolver(network.Equations).Solve(all);
                for (var r = 0; r < network.Equations.Unknowns; r++)
                {
                    var parts = all.Skip(1).Select(p => p.Solution[r]).ToList();
                    Assert.Equal(parts.Sum(), all[0].Solution[r], 1e-9 + (1e-9 * parts.Sum(Math.Abs)));
                }
            },
            iter: 400,
            threads: 1
        );
    }

    [Fact]
    public void An_ampere_here_makes_the_volts_there_that_it_makes_here_from_there()
    {
        LinearNetwork.Any.Sample(
            network =>
            {
                var n = network.Equations.Unknowns;
                List<StaticProblem> all = [.. Enumerable.Range(0, n).Select(r => network.With(_ => false, (r, 1e-3)))];
                new StaticSolver(network.Equations).Solve(all);
                for (var a = 0; a < n; a++)
                {
                    for (var b = 0; b < a; b++)
                    {
                        var there = all[a].Solution[b];
                        Assert.Equal(there, all[b].Solution[a], 1e-9 + (1e-8 * Math.Abs(there)));
                    }
                }
            },
            iter: 300,
            threads: 1
        );
    }

    [Fact]
    public void Reciprocity_holds_at_every_frequency()
    {
        Gen.Select(LinearNetwork.Any, Gen.Double[0, 5])
            .Sample(
                (network, decade) =>
                {
                    var n = network.Equations.Unknowns;
                    var signal = new SmallSignalSolver(network.Equations);
                    signal.Prepare(network.Slots, new double[n], Math.Pow(10, decade));
                    var rows = Enumerable.Range(0, n).Select(r => signal.Adjoint(r, -1)).ToArray();
                    for (var a = 0; a < n; a++)
                    {
                        for (var b = 0; b < a; b++)
                        {
                            var apart = (rows[a][b] - rows[b][a]).Magnitude;
                            Assert.True(apart <= 1e-8 * (1 + rows[a][b].Magnitude), $"{a} and {b}: {rows[a][b]}, {rows[b][a]}");
                        }
                    }
                },
                iter: 300,
                threads: 1
            );
    }

    [Fact]
    public void Sensitivity_of_a_signal_equals_its_finite_difference()
    {
        const double Share = 1e-3;
        Gen.Select(LinearNetwork.Any, Gen.Double[0, 5], Gen.Int[0, 1000])
            .Sample(
                (network, decade, pick) =>
                {
                    var hertz = Math.Pow(10, decade);
                    var output = network.Equations.Unknowns - 1;
                    var branch = network.Branches[pick % network.Branches.Count];
                    var signal = At(network, hertz, branch, 0);
                    var x = signal.Respond(network.Branches[0]);
                    var foretold = signal.BranchEffect(branch, 1, hertz, x, signal.Adjoint(output, -1));
                    if (branch == network.Branches[0])
                    {
                        // The generator's own branch moves what it drives as well.
                        return;
                    }

                    var up = At(network, hertz, branch, Share).Respond(network.Branches[0])[output];
                    var down = At(network, hertz, branch, -Share).Respond(network.Branches[0])[output];
                    var difference = (up - down) / (2 * Share);
                    Assert.True(
                        (foretold - difference).Magnitude <= 2e-6 + (1e-4 * difference.Magnitude),
                        $"{foretold} against {difference}"
                    );
                },
                iter: 600,
                threads: 1
            );
    }

    private static SmallSignalSolver At(LinearNetwork network, double hertz, int branch, double share)
    {
        var slots = (double[])network.Slots.Clone();
        slots[network.Equations.Branches[branch].Slot] *= 1 + share;
        var signal = new SmallSignalSolver(network.Equations);
        signal.Prepare(slots, new double[network.Equations.Unknowns], hertz);
        return signal;
    }
}
