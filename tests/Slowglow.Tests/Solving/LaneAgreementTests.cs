using CsCheck;
using Slowglow.Circuits.Models.Diode;
using Slowglow.Solving;

namespace Slowglow.Tests.Solving;

/// <summary>Random networks of resistors and diodes: Kirchhoff's sums, a plain dense solution, and one lane against four.</summary>
public sealed class LaneAgreementTests
{
    private sealed record Network(
        Equations Equations,
        double[] Slots,
        List<(int A, int B, double Siemens)> Resistors,
        List<(int A, int K)> Diodes
    );

    private static readonly Gen<Network> Networks =
        from nets in Gen.Int[2, 12]
        from resistors in Gen.Select(Gen.Int[-1, nets - 1], Gen.Int[-1, nets - 1], Gen.Double[-5, -1]).Array[nets, 3 * nets]
        from diodes in Gen.Select(Gen.Int[-1, nets - 1], Gen.Int[-1, nets - 1]).Array[0, nets]
        from volts in Gen.Double[-30, 30]
        select Build(nets, resistors, diodes, volts);

    private static Network Build(int nets, (int, int, double)[] resistors, (int, int)[] diodes, double volts)
    {
        var b = new EquationsBuilder();
        for (var n = 0; n < nets; n++)
        {
            b.NewUnknown();
        }

        var source = b.NewSlot(0.1);
        b.AddBranch(BranchKind.Conductance, 0, -1, source, b.NewSlot(volts));
        List<(int, int, double)> placed = [];
        foreach (var (from, to, exponent) in resistors.Where(r => r.Item1 != r.Item2))
        {
            var siemens = Math.Pow(10, exponent);
            b.AddBranch(BranchKind.Conductance, from, to, b.NewSlot(siemens));
            placed.Add((from, to, siemens));
        }

        List<(int, int)> junctions = [];
        foreach (var (a, k) in diodes.Where(d => d.Item1 != d.Item2))
        {
            var first = b.NewSlot(1e-9);
            foreach (var constant in new[] { 1.8, 0.05, 1e4, 1, 1e-5, 1 })
            {
                b.NewSlot(constant);
            }

            b.AddElement(new DiodeLaw(), [a, k], first);
            junctions.Add((a, k));
        }

        return new Network(b.Build(), b.SlotValues(), placed, junctions);
    }

    [Fact]
    public void Currents_into_every_net_sum_to_nothing()
    {
        Networks.Sample(
            network =>
            {
                var problem = Solve(network, 1)[0];
                Assert.True(problem.Settled);
                var sums = new double[network.Equations.Unknowns];
                var largest = new double[sums.Length];
                void Flow(int from, int to, double amps)
                {
                    foreach (var (row, sign) in new[] { (from, -1.0), (to, 1.0) })
                    {
                        if (row >= 0)
                        {
                            sums[row] += sign * amps;
                            largest[row] = Math.Max(largest[row], Math.Abs(amps));
                        }
                    }
                }

                double At(int row) => row < 0 ? 0 : problem.Solution[row];
                Flow(0, -1, 0.1 * (At(0) - network.Slots[1]));
                network.Resistors.ForEach(r => Flow(r.A, r.B, r.Siemens * (At(r.A) - At(r.B))));
                network.Diodes.ForEach(d => Flow(d.A, d.K, PlainDiode(At(d.A) - At(d.K))));
                for (var n = 0; n < sums.Length; n++)
                {
                    Assert.True(Math.Abs(sums[n]) <= 1e-9 + (2e-5 * largest[n]), $"net {n}: {sums[n]} of {largest[n]}");
                }
            },
            iter: 400,
            threads: 1
        );
    }

    /// <summary>Diode with series resistance by bisection on its own voltage: slow and obvious.</summary>
    private static double PlainDiode(double volts)
    {
        if (volts < -5)
        {
            return -1e-9;
        }

        double low = -6,
            high = 3;
        for (var k = 0; k < 200; k++)
        {
            var middle = (low + high) / 2;
            var amps = 1e-9 * (Math.Exp(middle / (1.8 * DiodeLaw.ThermalVolts)) - 1);
            (low, high) = middle + (0.05 * amps) < volts ? (middle, high) : (low, middle);
        }

        return 1e-9 * (Math.Exp(low / (1.8 * DiodeLaw.ThermalVolts)) - 1);
    }

    [Fact]
    public void Without_diodes_the_sparse_lanes_agree_with_dense_elimination()
    {
        Networks.Sample(
            network =>
            {
                var linear = network.Diodes.Count == 0;
                if (linear)
                {
                    var problem = Solve(network, 1)[0];
                    var dense = Dense(network);
                    for (var n = 0; n < dense.Length; n++)
                    {
                        Assert.Equal(dense[n], problem.Solution[n], 1e-7 + (1e-7 * Math.Abs(dense[n])));
                    }
                }
            },
            iter: 600,
            threads: 1
        );
    }

    private static double[] Dense(Network network)
    {
        var n = network.Equations.Unknowns;
        var a = new double[n * n];
        var b = new double[n];
        void Stamp(int p, int q, double g)
        {
            foreach (var (row, other) in new[] { (p, q), (q, p) })
            {
                if (row >= 0)
                {
                    a[(row * n) + row] += g;
                    if (other >= 0)
                    {
                        a[(row * n) + other] -= g;
                    }
                }
            }
        }

        for (var k = 0; k < n; k++)
        {
            Stamp(k, -1, 1e-12);
        }

        Stamp(0, -1, 0.1);
        b[0] = 0.1 * network.Slots[1];
        network.Resistors.ForEach(r => Stamp(r.A, r.B, r.Siemens));
        Assert.True(DenseSolve.InPlace(a, b, n, 1));
        return b;
    }

    [Fact]
    public void A_world_comes_out_the_same_alone_and_in_company()
    {
        Networks.Sample(
            network =>
            {
                var alone = Solve(network, 1)[0];
                var others = Solve(network, 7);
                foreach (var other in others.Where((_, k) => k % 2 == 0))
                {
                    for (var n = 0; n < alone.Solution.Length; n++)
                    {
                        Assert.Equal(alone.Solution[n], other.Solution[n], 1e-9 + (1e-9 * Math.Abs(alone.Solution[n])));
                    }
                }
            },
            iter: 200,
            threads: 1
        );
    }

    /// <summary>The network so many times; every second one with its source halved.</summary>
    private static List<StaticProblem> Solve(Network network, int times)
    {
        var problems = Enumerable
            .Range(0, times)
            .Select(k =>
            {
                var slots = (double[])network.Slots.Clone();
                slots[1] *= k % 2 == 0 ? 1 : 0.5;
                return new StaticProblem { Slots = slots, Start = new double[network.Equations.Unknowns] };
            })
            .ToList();
        new StaticSolver(network.Equations).Solve(problems);
        return problems;
    }
}
