using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// Newton, with half steps when the residual grows (rectifier kinks), and plain cycles when that does not help.
/// </summary>
internal sealed class Shooting(CycleProblem problem, Equations equations) : PeriodSearch(problem, equations)
{
    /// <summary>Times that the residual may rise before steps are cut: Newton often goes up before it comes down.</summary>
    private const int Patience = 2;
    public const int SearchCycles = 12;
    private const int RunningCycles = 60;
    public const int MostCycles = SearchCycles + RunningCycles + 20;

    private double[] baseStates = [];
    private double[] step = [];
    private double baseResidual = double.PositiveInfinity;
    private double factor = 1;
    private int rested;
    private int risen;

    public override bool Running => rested > 0 && rested <= RunningCycles;

    public override void Judge(CycleColumns columns, Lane[] end, Lane[] x, int lane, bool working)
    {
        if (Finished)
        {
            return;
        }

        Cycles++;
        if (Cycles >= MostCycles)
        {
            Finished = true;
            return;
        }

        if (Cycles == SearchCycles || Running)
        {
            Run(end, x, lane, working);
            return;
        }

        var (residual, norm) = Change(end, lane);
        if (!working || double.IsNaN(norm))
        {
            Recover();
            return;
        }

        if (norm > baseResidual && factor > 0.05 && step.Length > 0 && ++risen > Patience)
        {
            factor /= 2;
            States = [.. baseStates.Select((s, m) => s + (factor * step[m]))];
            return;
        }

        if (norm <= baseResidual)
        {
            risen = 0;
        }

        Take(columns, lane, residual, norm, Lanes.Column(x, lane));
    }

    private void Take(CycleColumns columns, int lane, double[] residual, double norm, double[] x)
    {
        (baseStates, baseResidual, factor) = (States, norm, 1);
        (step, var largest) = Move(States, residual, PeriodMatrix(columns, lane));
        Start = x;
        if (largest < Arrived)
        {
            Arrive();
        }
    }

    /// <summary>Takes the end of the cycle as the next beginning.</summary>
    private void Run(Lane[] end, Lane[] x, int lane, bool working)
    {
        rested++;
        (baseResidual, factor, step) = (double.PositiveInfinity, 1, []);
        if (working)
        {
            States = Lanes.Column(end, lane);
            Start = Lanes.Column(x, lane);
        }
        else
        {
            Finished = true;
        }
    }

    private void Recover()
    {
        if (step.Length > 0 && factor > 0.01)
        {
            factor /= 4;
            States = [.. baseStates.Select((s, m) => s + (factor * step[m]))];
        }
        else
        {
            Finished = true;
        }
    }
}
