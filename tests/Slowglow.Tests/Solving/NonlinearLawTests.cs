using CsCheck;
using Slowglow.Solving;

namespace Slowglow.Tests.Solving;

/// <summary>Laws that hold with diodes, valves and transistors too, on random circuits.</summary>
public sealed class NonlinearLawTests
{
    [Fact]
    public void What_the_source_gives_the_parts_take()
    {
        RandomCircuit.Any.Sample(
            made =>
            {
                var problem = Solved(made);
                if (!problem.Settled)
                {
                    return;
                }

                double At(int row) => row < 0 ? 0 : problem.Solution[row];
                var volts = problem.Slots[made.Source];
                var given = RandomCircuit.SourceSiemens * (volts - At(0)) * volts;
                double taken = RandomCircuit.SourceSiemens * Math.Pow(volts - At(0), 2);
                foreach (var branch in made.Equations.Branches.Skip(1))
                {
                    var u = branch.Rows.Select((r, k) => branch.Weights[k] * At(r)).Sum();
                    taken += problem.Slots[branch.Slot] * u * u;
                }

                foreach (var element in made.Equations.Elements)
                {
                    var watts = Watts(element, problem);

                    // A valve's grid and a junction's tail are laws of their own; beyond their last digits nothing gives power.
                    Assert.True(watts >= -1e-6, $"{element.Law.GetType().Name} gives {-watts:G3} W");
                    taken += watts;
                }

                Assert.Equal(given, taken, 1e-7 + (3e-4 * taken));
            },
            iter: 500,
            threads: 1
        );
    }

    private static double Watts(Element element, StaticProblem problem)
    {
        double At(int row) => row < 0 ? 0 : problem.Solution[row];
        double[] volts = [.. element.Rows.SkipLast(1).Select(r => At(r) - At(element.Rows[^1]))];
        var constants = problem.Slots.AsSpan(element.Slot, element.Law.Constants);
        return ElementEvaluation.Currents(element.Law, constants, volts, 1).Zip(volts, (i, u) => i * u).Sum();
    }

    /// <summary>A circuit with positive feedback may rest on either side, and a high gain magnifies the last digits: a few in a hundred.</summary>
    private const double Excused = 0.02;

    [Fact]
    public void All_impedances_times_a_factor_leave_the_volts()
    {
        var (circuits, apart) = (0, 0);
        RandomCircuit.Pairs.Sample(
            pair =>
            {
                var (plain, scaled) = (Solved(pair.Plain), Solved(pair.Scaled));
                if (plain.Settled && scaled.Settled)
                {
                    circuits++;
                    var same = plain
                        .Solution.Zip(scaled.Solution)
                        .All(v => Math.Abs(v.First - v.Second) < 1e-3 + (1e-4 * Math.Abs(v.First)));
                    apart += same ? 0 : 1;
                }
            },
            iter: 400,
            threads: 1
        );
        Assert.True(circuits > 300);
        Assert.True(apart <= Excused * circuits, $"{apart} of {circuits}");
    }

    /// <summary>At random, and with circuits in which a diode's small step over its knee once hung on what its neighbours did.</summary>
    [Theory]
    [InlineData(null)]
    [InlineData("8xYaPCGIjNt9")]
    [InlineData("eHRzOAymLAR1")]
    public void One_lane_is_many_lanes_bit_for_bit(string? seed)
    {
        RandomCircuit.Any.Sample(
            made =>
            {
                var alone = Solved(made);
                List<StaticProblem> company =
                [
                    .. Enumerable
                        .Range(0, 9)
                        .Select(k => made.Problem((made.Source, made.Slots[made.Source] * (k % 3 == 0 ? 1 : 0.3 * k)))),
                ];
                new StaticSolver(made.Equations).Solve(company);
                foreach (var other in company.Where((_, k) => k % 3 == 0))
                {
                    Assert.Equal(alone.Settled, other.Settled);
                    Assert.Equal(
                        alone.Solution.Select(BitConverter.DoubleToInt64Bits),
                        other.Solution.Select(BitConverter.DoubleToInt64Bits)
                    );
                }
            },
            seed: seed,
            iter: 200,
            threads: 1
        );
    }

    [Fact]
    public void Sensitivity_at_rest_equals_its_finite_difference()
    {
        const double Share = 1e-3;
        var (compared, apart) = (0, 0);
        Gen.Select(RandomCircuit.Any, Gen.Int[0, 1000])
            .Sample(
                (made, pick) =>
                {
                    var slot = made.Resistors[pick % made.Resistors.Count];
                    var branch = Enumerable
                        .Range(0, made.Equations.Branches.Count)
                        .First(b => made.Equations.Branches[b].Slot == slot);
                    StaticProblem[] three =
                    [
                        .. new[] { 0, Share, -Share }.Select(s => made.Problem((slot, made.Slots[slot] * (1 + s)))),
                    ];
                    new StaticSolver(made.Equations).Solve(three);
                    if (three.Any(p => !p.Settled))
                    {
                        return;
                    }

                    var signal = new SmallSignalSolver(made.Equations);
                    signal.Prepare(made.Slots, three[0].Solution, 0);
                    System.Numerics.Complex[] x = [.. three[0].Solution.Select(v => new System.Numerics.Complex(v, 0))];
                    for (var r = 0; r < x.Length; r++)
                    {
                        var foretold = signal.BranchEffect(branch, 1, 0, x, signal.Adjoint(r, -1)).Real;
                        var difference = (three[1].Solution[r] - three[2].Solution[r]) / (2 * Share);
                        apart += Math.Abs(difference - foretold) <= 2e-3 + (5e-3 * Math.Abs(difference)) ? 0 : 1;
                        compared++;
                    }
                },
                iter: 400,
                threads: 1
            );
        Assert.True(compared > 1000);
        Assert.True(apart <= Excused * compared, $"{apart} of {compared}");
    }

    private static StaticProblem Solved(RandomCircuit made)
    {
        var problem = made.Problem();
        new StaticSolver(made.Equations).Solve([problem]);
        return problem;
    }
}
