using Slowglow.Circuits;
using Slowglow.Circuits.Models.Resistor;
using Slowglow.Sheets.Setups;
using Slowglow.Solving;
using Slowglow.Tests.ReferenceSolver;

namespace Slowglow.Tests.Solving;

/// <summary>All sensitivities and variances at rest against differences of solved neighbours.</summary>
public sealed class RestSensitivityTests
{
    private const double Step = 1e-3;

    [Theory]
    [InlineData("push-pull-cathode-bias")]
    [InlineData("small-signal")]
    public void Sensitivities_are_differences_and_variances_their_squares(string name)
    {
        var circuit = Circuit.From(CircuitFiles.Read(name)).Value!;
        var slots = circuit.SlotsOf(Setup.Default, []);
        foreach (var slot in circuit.OpenAtCrest)
        {
            slots[slot] = 1e9;
        }

        var n = circuit.Equations.Unknowns;
        int[] moved =
        [
            .. circuit.Models.OfType<ResistorModel>().Select(m => circuit.Changes[IndexOf(circuit, m.Designator)][0].Slot),
        ];
        var middle = Solve(circuit, slots, new double[n]);
        var sensitivity = new RestSensitivity(circuit.Equations, [.. moved.Select(s => new SlotChange(s, 0.02))]);
        sensitivity.Solve(slots, middle, 1);
        for (var row = 0; row < n; row++)
        {
            var sum = moved.Select((_, m) => Math.Pow(sensitivity.Of(m, row), 2)).Sum();
            Assert.Equal(sum, sensitivity.Variance(row), 1e-9 * sum);
        }

        for (var m = 0; m < moved.Length; m++)
        {
            double[] Beside(double factor)
            {
                var other = (double[])slots.Clone();
                other[moved[m]] *= factor;
                return Solve(circuit, other, middle);
            }

            var (up, down) = (Beside(1 + Step), Beside(1 - Step));
            for (var row = 0; row < n; row++)
            {
                var difference = (up[row] - down[row]) / (2 * Step) * 0.02;
                Assert.Equal(difference, sensitivity.Of(m, row), 1e-4 + (0.01 * Math.Abs(difference)));
            }
        }
    }

    private static int IndexOf(Circuit circuit, string designator) =>
        circuit.Parameters.Select((p, k) => (p, k)).First(p => p.p.Part == designator).k;

    private static double[] Solve(Circuit circuit, double[] slots, double[] start)
    {
        var problem = new StaticProblem { Slots = slots, Start = start };
        new StaticSolver(circuit.Equations).Solve([problem], 1);
        Assert.True(problem.Settled);
        return problem.Solution;
    }
}
