using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>One world's search for the states that a period leaves as they were, by the period's matrix.</summary>
internal abstract class PeriodSearch(CycleProblem problem, Equations equations)
{
    /// <summary>Change of the states, on their scales, below which a search has arrived.</summary>
    protected const double Arrived = 1e-4;
    private const double MostStride = 1000;

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

    /// <summary>What a cycle changes of the states, and its size on their scales.</summary>
    protected (double[] Residual, double Norm) Change(Lane[] end, int lane)
    {
        var residual = new double[States.Length];
        double sum = 0;
        for (var m = 0; m < residual.Length; m++)
        {
            residual[m] = Lanes.Get(in end[m], lane) - States[m];
            var scaled = residual[m] / CycleStates.Scale(equations, m, States[m]);
            sum += scaled * scaled;
        }

        return (residual, Math.Sqrt(sum / Math.Max(1, residual.Length)));
    }

    /// <summary>
    /// The step that a matrix makes of a residual (the residual itself where it makes none); the next states are that far from <paramref name="from"/>.
    /// Returns the step and how far it goes on the scale of the state it moves most. The matrix is used up.
    /// </summary>
    protected (double[] Step, double Largest) Move(double[] from, double[] residual, double[] matrix)
    {
        var n = from.Length;
        double[] step = [.. residual];
        if (!DenseSolve.InPlace(matrix, step, n, 1) || step.Any(d => !double.IsFinite(d)))
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
        var stride = largest > MostStride ? MostStride / largest : 1;
        States = [.. from.Select((s, m) => s + (stride * step[m]))];
        return (step, largest);
    }

    protected void Arrive() => (Finished, Settled, Restless) = (true, true, -1);

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
