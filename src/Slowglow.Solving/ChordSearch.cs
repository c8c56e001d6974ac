using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// One world's search for the states that a period leaves as they were, without following the states' own directions: it begins with
/// what a period does in a relative of this world and learns the difference from its own cycles (Broyden's rule, Math. Comp. 19, 1965).
/// </summary>
internal sealed class ChordSearch
{
    private const int MostCycles = 10;
    private const int MostSetbacks = 3;
    private readonly double[] approach;
    private readonly double[] scale;
    private double[] residual = [];
    private double[] step = [];
    private double norm = double.PositiveInfinity;
    private int setbacks;

    public ChordSearch(CycleProblem problem, Equations equations)
    {
        Problem = problem;
        States = [.. problem.States];
        Start = problem.Start;
        var reference = problem.Relative!;
        var n = States.Length;
        scale =
        [
            .. States.Select((s, m) => CycleStates.Scale(equations, m, Math.Max(Math.Abs(s), Math.Abs(reference.States[m])))),
        ];
        approach = new double[n * n];
        for (var r = 0; r < n; r++)
        {
            for (var c = 0; c < n; c++)
            {
                approach[(r * n) + c] = reference.Approach[(r * n) + c] * scale[c] / scale[r];
            }
        }
    }

    public CycleProblem Problem { get; }
    public double[] States { get; private set; }
    public double[] Start { get; private set; }
    public int Cycles { get; private set; }
    public bool Settled { get; private set; }

    /// <summary>True when this way leads nowhere: the exact matrix of the period is needed.</summary>
    public bool Lost { get; private set; }

    /// <summary>Looks at the end of a cycle and sets the next beginning.</summary>
    public void Judge(ReadOnlySpan<Lane> end, ReadOnlySpan<Lane> x, int lane, bool working)
    {
        Cycles++;
        var n = States.Length;
        var left = new double[n];
        double sum = 0;
        for (var m = 0; m < n; m++)
        {
            left[m] = (Lanes.Get(in end[m], lane) - States[m]) / scale[m];
            sum += left[m] * left[m];
        }

        sum = Math.Sqrt(sum / Math.Max(1, n));
        if (!working || !double.IsFinite(sum))
        {
            Lost = true;
            return;
        }

        if (step.Length > 0)
        {
            Learn(left);
        }

        setbacks += sum > 0.5 * norm ? 1 : 0;
        (residual, norm) = (left, sum);
        step = Times(left);
        var largest = Largest(step);
        if (largest < CycleStates.Settled)
        {
            Settled = true;
            Problem.Left = [.. left.Select((l, m) => l * scale[m])];
            return;
        }

        Lost = !(largest < 1e3) || setbacks > MostSetbacks || Cycles >= MostCycles;
        for (var m = 0; m < n; m++)
        {
            States[m] += step[m] * scale[m];
        }

        Start = Lanes.Column(x, lane);
    }

    private static double Largest(double[] step)
    {
        double largest = 0;
        foreach (var s in step)
        {
            // A NaN must come out as the largest.
            largest = s <= largest && s >= -largest ? largest : Math.Abs(s);
        }

        return largest;
    }

    private double[] Times(double[] v)
    {
        var n = v.Length;
        var result = new double[n];
        for (var r = 0; r < n; r++)
        {
            double sum = 0;
            for (var c = 0; c < n; c++)
            {
                sum += approach[(r * n) + c] * v[c];
            }

            result[r] = sum;
        }

        return result;
    }

    /// <summary>The last step should have removed the residual: whatever it did instead corrects the approach.</summary>
    private void Learn(double[] left)
    {
        var n = left.Length;
        var removed = new double[n];
        for (var m = 0; m < n; m++)
        {
            removed[m] = residual[m] - left[m];
        }

        var answered = Times(removed);
        double product = 0;
        double square = 0;
        for (var m = 0; m < n; m++)
        {
            product += step[m] * answered[m];
            square += step[m] * step[m];
        }

        if (!(Math.Abs(product) > 0.05 * square))
        {
            return;
        }

        var row = new double[n];
        for (var r = 0; r < n; r++)
        {
            for (var c = 0; c < n; c++)
            {
                row[c] += step[r] * approach[(r * n) + c];
            }
        }

        for (var r = 0; r < n; r++)
        {
            var share = (step[r] - answered[r]) / product;
            for (var c = 0; c < n; c++)
            {
                approach[(r * n) + c] += share * row[c];
            }
        }
    }
}
