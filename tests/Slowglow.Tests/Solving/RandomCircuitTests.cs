using CsCheck;
using Slowglow.Solving;

namespace Slowglow.Tests.Solving;

/// <summary>
/// Random connected circuits of resistors, diodes, triodes and transistors, each whole and with every resistor open and shorted: nothing hangs or
/// throws, what settles obeys Kirchhoff at every net, and nearly everything settles.
/// </summary>
public sealed class RandomCircuitTests
{
    private const int Circuits = 500;

    [Fact]
    public void Every_single_fault_settles_by_Kirchhoff_or_is_said_not_to()
    {
        var (worlds, unsettled) = (0, 0);
        RandomCircuit.Any.Sample(
            made =>
            {
                var problems = made
                    .Resistors.SelectMany(r => new[] { (r, 1e-12), (r, 10.0) })
                    .Prepend((made.Resistors[0], made.Slots[made.Resistors[0]]))
                    .Select(f => made.Problem(f))
                    .ToList();
                new StaticSolver(made.Equations).Solve(problems);
                foreach (var problem in problems.Where(p => p.Settled))
                {
                    Kirchhoff.Holds(made.Equations, problem);
                }

                worlds += problems.Count;
                unsettled += problems.Count(p => !p.Settled);
            },
            iter: Circuits,
            threads: 1
        );
        Assert.True(unsettled <= worlds / 500, $"{unsettled} of {worlds} do not settle");
    }
}
