using Slowglow.Solving;

namespace Slowglow.Tests.Solving;

/// <summary>Kirchhoff's current law at every net.</summary>
internal static class Kirchhoff
{
    /// <summary>Holds a solution at rest to the sum of currents at every net.</summary>
    public static void Holds(Equations equations, StaticProblem problem)
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
