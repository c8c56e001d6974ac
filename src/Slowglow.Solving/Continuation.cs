using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// For worlds that Newton's full steps throw about: the world is let run on for some cycles at once, by the period's matrix, ever more of them as it
/// comes to rest (pseudo-transient continuation, Kelley and Keyes, SIAM J. Numer. Anal. 35, 1998), so that it arrives where a unit would.
/// </summary>
internal sealed class Continuation(CycleProblem problem, Equations equations) : PeriodSearch(problem, equations)
{
    /// <summary>Cycles at once to begin with, the fewest that are still some, and so many that the step is Newton's.</summary>
    private const double FirstReach = 2;
    private const double LeastReach = 0.1;
    private const double MostReach = 1e3;

    /// <summary>A residual may rise by so much where the world itself runs that way.</summary>
    private const double Rise = 1.5;
    public const int MostCycles = 48;

    /// <summary>The cycle that steps are taken from: the last that was progress, not the one with the least residual.</summary>
    private (double[] States, double[] Start, double[] Matrix, double[] Residual, double Norm) last = (
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
        var (residual, norm) = Change(end, lane);
        if (working && IsProgress(norm))
        {
            last = (States, Lanes.Column(x, lane), PeriodMatrix(columns, lane), residual, norm);
            Step();
        }
        else
        {
            ReachLess();
        }
    }

    private bool IsProgress(double norm)
    {
        if (norm < last.Norm)
        {
            reach *= 3;
            return true;
        }

        return reach < MostReach && norm < Rise * last.Norm;
    }

    private void ReachLess()
    {
        reach = Math.Min(reach, MostReach) / 4;
        if (reach < LeastReach || last.States.Length == 0)
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
        var (from, start, matrix, residual, _) = last;
        double[] held = [.. matrix];
        for (var m = 0; m < from.Length && reach < MostReach; m++)
        {
            held[(m * from.Length) + m] += 1 / reach;
        }

        var (_, largest) = Move(from, residual, held);
        Start = start;
        if (largest < Arrived && reach >= MostReach)
        {
            Arrive();
        }
    }
}
