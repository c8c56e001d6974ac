using CsCheck;
using Slowglow.Circuits.Models.Diode;
using Slowglow.Circuits.Models.Transistor;
using Slowglow.Circuits.Models.Valve;
using Slowglow.Solving;

namespace Slowglow.Tests.Solving;

/// <summary>
/// Random connected circuits of resistors, diodes, triodes and transistors, each whole and with every resistor open and shorted: nothing hangs or
/// throws, what settles obeys Kirchhoff at every net, and nearly everything settles.
/// </summary>
public sealed class RandomCircuitTests
{
    private const int Circuits = 500;

    private sealed record Made(Equations Equations, double[] Slots, List<int> Resistors);

    private static readonly Gen<Made> Random =
        from nets in Gen.Int[3, 14]
        from tree in Gen.Double[2, 6].Array[nets]
        from parents in Gen.Int[-1, nets - 2].Array[nets]
        from more in Gen.Select(Gen.Int[-1, nets - 1], Gen.Int[-1, nets - 1], Gen.Double[2, 6]).Array[0, nets]
        from diodes in Gen.Select(Gen.Int[-1, nets - 1], Gen.Int[-1, nets - 1]).Array[0, 4]
        from threes in Gen.Select(Gen.Bool, Gen.Int[0, nets - 1], Gen.Int[-1, nets - 1], Gen.Int[-1, nets - 1]).Array[0, 4]
        from volts in Gen.Double[-40, 300]
        select Build(tree, parents, more, diodes, threes, volts);

    private static Made Build(
        double[] tree,
        int[] parents,
        (int, int, double)[] more,
        (int, int)[] diodes,
        (bool, int, int, int)[] threes,
        double volts
    )
    {
        var b = new EquationsBuilder();
        List<int> resistors = [];
        for (var n = 0; n < tree.Length; n++)
        {
            b.NewUnknown();
        }

        void Resistor(int from, int to, double exponent)
        {
            if (from != to)
            {
                resistors.Add(b.NewSlot(Math.Pow(10, -exponent)));
                b.AddBranch(BranchKind.Conductance, from, to, resistors[^1]);
            }
        }

        b.AddBranch(BranchKind.Conductance, 0, -1, b.NewSlot(0.1), b.NewSlot(volts));
        for (var n = 0; n < tree.Length; n++)
        {
            Resistor(n, Math.Min(parents[n], n - 1), tree[n]);
        }

        foreach (var (from, to, exponent) in more)
        {
            Resistor(from, to, exponent);
        }

        foreach (var (anode, cathode) in diodes.Where(d => d.Item1 != d.Item2))
        {
            b.AddElement(new DiodeLaw(), [anode, cathode], Constants(b, 2.5e-9, 1.75, 0.6, 1e5, 1, 1e-6, 1));
        }

        foreach (
            var (valve, first, second, third) in threes.Where(t => t.Item2 != t.Item4 && t.Item2 != t.Item3 && t.Item3 != t.Item4)
        )
        {
            // Koren's 12AX7 (Glass Audio 8(5), 1996); an ordinary small npn.
            b.AddElement(
                valve ? new TriodeLaw() : new BjtLaw(),
                [first, second, third],
                valve ? Constants(b, 100, 1.4, 1060, 600, 300, 0, 6e-4, 10, 1.3, 1) : Constants(b, 1, 1e-14, 200, 4, 100, 1, 1, 1)
            );
        }

        return new Made(b.Build(), b.SlotValues(), resistors);
    }

    private static int Constants(EquationsBuilder b, params double[] values)
    {
        var first = b.NewSlot(values[0]);
        foreach (var value in values.Skip(1))
        {
            b.NewSlot(value);
        }

        return first;
    }

    [Fact]
    public void Every_single_fault_settles_by_Kirchhoff_or_is_said_not_to()
    {
        var (worlds, unsettled) = (0, 0);
        Random.Sample(
            made =>
            {
                var problems = made
                    .Resistors.SelectMany(r => new[] { (r, 1e-12), (r, 10.0) })
                    .Prepend((made.Resistors[0], made.Slots[made.Resistors[0]]))
                    .Select(f =>
                    {
                        var slots = (double[])made.Slots.Clone();
                        slots[f.Item1] = f.Item2;
                        return new StaticProblem { Slots = slots, Start = new double[made.Equations.Unknowns] };
                    })
                    .ToList();
                new StaticSolver(made.Equations).Solve(problems);
                foreach (var problem in problems.Where(p => p.Settled))
                {
                    Balanced(made.Equations, problem);
                }

                worlds += problems.Count;
                unsettled += problems.Count(p => !p.Settled);
            },
            iter: Circuits,
            threads: 1
        );
        Assert.True(unsettled <= worlds / 500, $"{unsettled} of {worlds} do not settle");
    }

    private static void Balanced(Equations equations, StaticProblem problem)
    {
        var n = equations.Unknowns;
        var (sums, largest, fine) = (new double[n], new double[n], new double[n]);
        double At(int row) => row < 0 ? 0 : problem.Solution[row];
        void Flow(int row, double amps)
        {
            if (row >= 0)
            {
                sums[row] += amps;
                largest[row] = Math.Max(largest[row], Math.Abs(amps));
            }
        }

        foreach (var branch in equations.Branches)
        {
            var u = branch.Rows.Select((r, k) => branch.Weights[k] * At(r)).Sum();
            var amps = problem.Slots[branch.Slot] * (u - (branch.SteadySlot >= 0 ? problem.Slots[branch.SteadySlot] : 0));
            for (var k = 0; k < branch.Rows.Length; k++)
            {
                Flow(branch.Rows[k], branch.Weights[k] * amps);
            }
        }

        foreach (var element in equations.Elements)
        {
            var ports = element.Law.Ports;
            double[] volts = [.. element.Rows.Take(ports).Select(r => At(r) - At(element.Rows[^1]))];
            var amps = ElementEvaluation.Currents(
                element.Law,
                problem.Slots.AsSpan(element.Slot, element.Law.Constants),
                volts,
                1
            );
            for (var p = 0; p < ports; p++)
            {
                Flow(element.Rows[p], amps[p]);
            }

            Flow(element.Rows[^1], -amps.Sum());
            AddWhatAMicrovoltMoves(problem, element, volts, amps, fine);
        }

        for (var r = 0; r < n; r++)
        {
            Assert.True(double.IsFinite(problem.Solution[r]));
            Assert.True(
                Math.Abs(sums[r]) <= 1e-8 + (1e-4 * largest[r]) + fine[r],
                $"net {r}: {sums[r]:G3} A left of {largest[r]:G3} A"
            );
        }
    }

    /// <summary>A junction without series resistance, driven hard, moves amperes in a microvolt: nearer than that no sum need come out.</summary>
    private static void AddWhatAMicrovoltMoves(
        StaticProblem problem,
        Element element,
        double[] volts,
        double[] amps,
        double[] fine
    )
    {
        for (var q = 0; q < volts.Length; q++)
        {
            var moved = (double[])volts.Clone();
            moved[q] += 1e-6;
            var then = ElementEvaluation.Currents(
                element.Law,
                problem.Slots.AsSpan(element.Slot, element.Law.Constants),
                moved,
                1
            );
            double all = 0;
            for (var p = 0; p < then.Length; p++)
            {
                var change = Math.Abs(then[p] - amps[p]);
                all += change;
                if (element.Rows[p] >= 0)
                {
                    fine[element.Rows[p]] += change;
                }
            }

            if (element.Rows[^1] >= 0)
            {
                fine[element.Rows[^1]] += all;
            }
        }
    }
}
