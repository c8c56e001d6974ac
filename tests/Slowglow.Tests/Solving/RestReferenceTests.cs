using CsCheck;
using Slowglow.Solving;

namespace Slowglow.Tests.Solving;

/// <summary>
/// A world started from a settled relative rests by Kirchhoff, and where one started from nothing does; the differences that are allowed
/// are those of two roads to one tolerance. A circuit with two resting states may go to either: one in twenty-five at most (of 200 random circuits 1 to 2.3 % did, by chance of the draw).
/// </summary>
public sealed class RestReferenceTests
{
    private const int Circuits = 200;

    /// <summary>Siemens of an open resistor; what it leaves hanging is no figure to compare.</summary>
    private const double Open = 1e-12;

    [Fact]
    public void Relatives_rest_where_strangers_do()
    {
        var (compared, atOnce, apart) = (0, 0, 0);
        RandomCircuit.Any.Sample(
            made =>
            {
                var healthy = made.Problem();
                new StaticSolver(made.Equations).Solve([healthy]);
                if (RestReference.Of(made.Equations, healthy) is not { } reference)
                {
                    return;
                }

                List<StaticProblem> strangers =
                [
                    made.Problem((made.Source, 0.9 * made.Slots[made.Source])),
                    .. made.Resistors.SelectMany(r => new[] { Open, 10, 1.05 * made.Slots[r] }.Select(g => made.Problem((r, g)))),
                ];
                var relatives = strangers
                    .Select(s => new StaticProblem
                    {
                        Slots = s.Slots,
                        Start = s.Start,
                        Relative = reference,
                    })
                    .ToList();
                new StaticSolver(made.Equations).Solve(strangers);
                new StaticSolver(made.Equations).Solve(relatives);
                foreach (var (stranger, relative) in strangers.Zip(relatives).Where(p => p.First.Settled && p.Second.Settled))
                {
                    Kirchhoff.Holds(made.Equations, relative);
                    if (made.Resistors.Any(r => relative.Slots[r] == Open))
                    {
                        continue;
                    }

                    compared++;
                    atOnce += relative.Steps == 1 ? 1 : 0;
                    apart += Same(stranger.Solution, relative.Solution) ? 0 : 1;
                }
            },
            iter: Circuits,
            seed: "0000KOIXWYK5",
            threads: 1
        );
        Assert.True(compared > 10 * Circuits, $"Only {compared} worlds compared.");
        Assert.True(atOnce > compared / 10, $"Only {atOnce} of {compared} worlds known to first order.");
        Assert.True(apart <= compared / 25, $"{apart} of {compared} worlds came to another rest.");
    }

    private static bool Same(double[] one, double[] other) =>
        one.Zip(other).All(p => Math.Abs(p.First - p.Second) <= 1e-6 + (1e-5 * Math.Abs(p.First)));
}
