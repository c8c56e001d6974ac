using System.Numerics;
using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// Finds the resting state of many worlds of one structure: storage branches open, flow branches a plain resistance. Newton with
/// limiting in lanes, a finished lane refilled at once; what does not settle climbs the ladder of <see cref="Ladder"/>.
/// One for each thread.
/// </summary>
public sealed class StaticSolver
{
    private const int MostSteps = 60;
    private readonly LaneSystem system;
    private readonly RestLoader loader;
    private readonly FirstOrder firstOrder;
    private readonly StaticProblem?[] inLane = new StaticProblem?[Lanes.Width];
    private readonly int[] steps = new int[Lanes.Width];
    private IReadOnlyList<(int Row, double Amps)> pushed = [];
    private bool filled;
    private double swing;

    public StaticSolver(Equations equations)
    {
        system = new LaneSystem(equations);
        loader = new RestLoader(system);
        firstOrder = new FirstOrder(equations);
    }

    /// <summary>Solves all problems with sine sources frozen at <paramref name="swing"/> (-1 to 1).</summary>
    public void Solve(IReadOnlyList<StaticProblem> problems, double swing = 0, CancellationToken cancel = default)
    {
        this.swing = swing;
        firstOrder.Begin(problems, swing);
        var hard = new List<StaticProblem>();
        Array.Clear(inLane);
        loader.Forget();
        filled = false;
        while (Refill())
        {
            cancel.ThrowIfCancellationRequested();
            Step(hard);
        }

        foreach (var problem in hard)
        {
            cancel.ThrowIfCancellationRequested();
            Ladder.Climb(this, problem);
        }
    }

    private bool Refill()
    {
        var changed = false;
        var busy = false;
        for (var lane = 0; lane < Lanes.Width; lane++)
        {
            if (inLane[lane] is null && firstOrder.Next() is { } problem)
            {
                if (!changed && filled)
                {
                    system.Elements.Still();
                }

                changed = true;
                inLane[lane] = problem;
                steps[lane] = problem.Advanced is null ? 0 : 1;
                loader.Load(lane, problem, swing);
            }

            busy |= inLane[lane] is not null;
        }

        if (!filled && busy)
        {
            FillIdleLanes();
        }

        filled = true;
        if (changed)
        {
            system.Elements.Evaluate(system.Slots);
        }

        return busy;
    }

    /// <summary>A lane that has no world from the beginning works on a copy of the first.</summary>
    private void FillIdleLanes()
    {
        for (var lane = 1; lane < Lanes.Width; lane++)
        {
            if (inLane[lane] is null)
            {
                loader.Load(lane, inLane[0]!, swing);
            }
        }
    }

    private void Newton()
    {
        Array.Copy(loader.Linear, system.Factors.Values, loader.Linear.Length);
        Array.Copy(loader.Sources, system.X, system.X.Length);
        system.Elements.Stamp(system.Factors.Values, system.X);
        system.Factors.Factor();
        system.Factors.Solve(system.X);
        system.Elements.Advance(system.X, system.Slots);
        system.Elements.Evaluate(system.Slots);
    }

    private void Step(List<StaticProblem> hard)
    {
        Newton();
        var agreeing = system.Elements.Agreeing();
        var broken = system.Broken();
        for (var lane = 0; lane < Lanes.Width; lane++)
        {
            if (inLane[lane] is not { } problem)
            {
                continue;
            }

            steps[lane]++;
            var bit = 1u << lane;
            if ((broken & bit) != 0 || steps[lane] >= MostSteps)
            {
                hard.Add(problem);
                problem.Steps = steps[lane];
                problem.Advanced = null;
                inLane[lane] = null;
            }
            else if ((agreeing & bit) != 0)
            {
                Unload(lane, problem);
            }
        }
    }

    private void Unload(int lane, StaticProblem problem)
    {
        var solution = new double[system.X.Length];
        for (var r = 0; r < solution.Length; r++)
        {
            solution[r] = Lanes.Get(in system.X[r], lane);
        }

        (problem.Solution, problem.Settled, problem.Steps, problem.Advanced) = (solution, true, steps[lane], null);
        inLane[lane] = null;
    }

    /// <summary>Loads one problem in all lanes, for stepping by the ladder.</summary>
    internal void LoadEverywhere(StaticProblem problem, ReadOnlySpan<double> start)
    {
        for (var s = 0; s < problem.Slots.Length; s++)
        {
            system.Slots[s] = Lanes.All(problem.Slots[s]);
        }

        pushed = problem.Pushed;
        for (var r = 0; r < start.Length; r++)
        {
            system.X[r] = Lanes.All(start[r]);
        }

        system.Elements.Linearise(system.X);
    }

    /// <summary>
    /// Newton from the present point with sources times <paramref name="scale"/> and extra siemens on every net; true when it settles.
    /// </summary>
    internal bool Settle(double scale, double extra, int most, double damping = 1)
    {
        system.Extra = Lanes.All(extra);
        system.AssembleLinear(0, loader.Linear);
        AssembleSources(Lanes.All(scale));
        system.Elements.Linearise(system.X);
        system.Elements.Evaluate(system.Slots);
        var settled = false;
        for (var n = 0; n < most && !settled; n++)
        {
            Lane[] before = damping < 1 ? [.. system.X] : [];
            Newton();
            if (system.Broken() != 0)
            {
                break;
            }

            settled = (system.Elements.Agreeing() & 1) != 0;
            if (damping < 1 && !settled)
            {
                for (var r = 0; r < before.Length; r++)
                {
                    system.X[r] = before[r] + (damping * (system.X[r] - before[r]));
                }

                system.Elements.Linearise(system.X);
                system.Elements.Evaluate(system.Slots);
            }
        }

        system.Extra = Lanes.Zero;
        return settled;
    }

    private void AssembleSources(in Lane scale)
    {
        system.AssembleSources(swing, scale, loader.Sources);
        foreach (var (row, amps) in pushed)
        {
            loader.Sources[row] += scale * amps;
        }
    }

    internal double[] Now() => Lanes.Column(system.X, 0);
}
