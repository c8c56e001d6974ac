using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// For worlds that Newton's full steps throw about: the world is let run on for some cycles at once, by the period's matrix, ever more of them as it
/// comes to rest (pseudo-transient continuation, Kelley and Keyes, SIAM J. Numer. Anal. 35, 1998), so that it arrives where a unit would.
/// </summary>
internal sealed class Continuation(CycleProblem problem, Equations equations) : PeriodSearch(problem)
{
    /// <summary>Cycles at once to begin with, the fewest that are still some, and so many that the step is Newton's.</summary>
    private const double FirstReach = 2;
    private const double LeastReach = 0.1;
    private const double MostReach = 1e3;

    /// <summary>A residual may rise by so much where the world itself runs that way.</summary>
    private const double Rise = 1.5;
    public const int MostCycles = 48;

    private (double[] States, double[] Start, double[] Matrix, double[] Residual, double Norm) best = (
        [],
        [],
        [],
        [],
        double.PositiveInfinity
    );
    private double reach = FirstReach;

    public override void Judge(CycleColumns columns, Lane[] end, Lane[] x, int lane, bool working)
    {
        if (Finished)
        {
            return;
        }

        Cycles++;
        var n = States.Length;
        var residual = new double[n];
        double norm = 0;
        for (var m = 0; m < n; m++)
        {
            residual[m] = Lanes.Get(in end[m], lane) - States[m];
            norm += Square(residual[m] / CycleStates.Scale(equations, m, States[m]));
        }

        norm = Math.Sqrt(norm / Math.Max(1, n));
        if (working && IsProgress(norm))
        {
            best = (States, Lanes.Column(x, lane), PeriodMatrix(columns, lane), residual, norm);
            Step();
        }
        else
        {
            ReachLess();
        }
    }

    private bool IsProgress(double norm)
    {
        if (norm < best.Norm)
        {
            reach *= 3;
            return true;
        }

        return reach < MostReach && norm < Rise * best.Norm;
    }

    private void ReachLess()
    {
        reach = Math.Min(reach, MostReach) / 4;
        if (reach < LeastReach || best.States.Length == 0)
        {
            Finished = true;
        }
        else
        {
            Step();
        }
    }

    private void Step()
    {
        var (from, start, matrix, residual, _) = best;
        var n = from.Length;
        double[] step = [.. residual];
        double[] held = [.. matrix];
        for (var m = 0; m < n && reach < MostReach; m++)
        {
            held[(m * n) + m] += 1 / reach;
        }

        if (!DenseSolve.InPlace(held, step, n, 1) || step.Any(d => !double.IsFinite(d)))
        {
            step = residual;
        }

        var largest = 0.0;
        for (var m = 0; m < n; m++)
        {
            var size = Math.Abs(step[m]) / CycleStates.Scale(equations, m, from[m]);
            if (size > largest)
            {
                (largest, Restless) = (size, m);
            }
        }

        // A state that would fly off is held to a believable stride.
        var stride = largest > 1000 ? 1000 / largest : 1;
        States = [.. from.Select((s, m) => s + (stride * step[m]))];
        Start = start;
        if (largest < Arrived && reach >= MostReach)
        {
            (Finished, Settled, Restless) = (true, true, -1);
        }
    }

    private static double Square(double v) => v * v;
}
