using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>One world's search for the states that a period leaves as they were, by the period's matrix.</summary>
internal abstract class PeriodSearch(CycleProblem problem)
{
    /// <summary>Change of the states, on their scales, below which a search has arrived.</summary>
    protected const double Arrived = 1e-4;

    public CycleProblem Problem => problem;
    public double[] States { get; protected set; } = [.. problem.States];
    public double[] Start { get; protected set; } = [.. problem.Start];
    public bool Finished { get; protected set; }
    public bool Settled { get; protected set; }
    public int Cycles { get; protected set; }
    public int Restless { get; protected set; } = -1;

    /// <summary>True while the unit is left to run, cycle after cycle: no matrix is needed.</summary>
    public virtual bool Running => false;

    /// <summary>Looks at the end of a cycle and sets the next beginning.</summary>
    public abstract void Judge(CycleColumns columns, Lane[] end, Lane[] x, int lane, bool working);

    /// <summary>I - d(end)/d(start), row major.</summary>
    public static double[] PeriodMatrix(CycleColumns columns, int lane)
    {
        var n = columns.States;
        var matrix = new double[n * n];
        for (var c = 0; c < n; c++)
        {
            for (var r = 0; r < n; r++)
            {
                matrix[(r * n) + c] = (r == c ? 1 : 0) - columns.End(c, r, lane);
            }
        }

        return matrix;
    }
}
