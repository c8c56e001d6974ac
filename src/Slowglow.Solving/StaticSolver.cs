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
    private readonly Lane[] linear;
    private readonly Lane[] sources;
    private readonly Lane[] pushed;
    private readonly StaticProblem?[] inLane = new StaticProblem?[Lanes.Width];
    private readonly int[] steps = new int[Lanes.Width];
    private double swing;

    public StaticSolver(Equations equations)
    {
        system = new LaneSystem(equations);
        linear = new Lane[system.Factors.Values.Length];
        sources = new Lane[equations.Unknowns];
        pushed = new Lane[equations.Unknowns];
    }

    /// <summary>Solves all problems with sine sources frozen at <paramref name="swing"/> (-1 to 1).</summary>
    public void Solve(IReadOnlyList<StaticProblem> problems, double swing = 0, CancellationToken cancel = default)
    {
        this.swing = swing;
        var hard = new List<StaticProblem>();
        var next = 0;
        Array.Clear(inLane);
        while (true)
        {
            cancel.ThrowIfCancellationRequested();
            if (!Refill(problems, ref next))
            {
                break;
            }

            Step(hard);
        }

        foreach (var problem in hard)
        {
            cancel.ThrowIfCancellationRequested();
            Ladder.Climb(this, problem);
        }
    }

    private bool Refill(IReadOnlyList<StaticProblem> problems, ref int next)
    {
        var changed = false;
        for (var lane = 0; lane < Lanes.Width; lane++)
        {
            if (inLane[lane] is null && next < problems.Count)
            {
                Load(lane, problems[next++]);
                changed = true;
            }
        }

        if (changed)
        {
            Prepare(Lanes.One);
        }

        return inLane.Any(p => p is not null);
    }

    private void Load(int lane, StaticProblem problem)
    {
        inLane[lane] = problem;
        steps[lane] = 0;
        for (var s = 0; s < problem.Slots.Length; s++)
        {
            Lanes.Put(ref system.Slots[s], lane, problem.Slots[s]);
        }

        for (var r = 0; r < problem.Start.Length; r++)
        {
            Lanes.Put(ref system.X[r], lane, problem.Start[r]);
        }

        for (var r = 0; r < pushed.Length; r++)
        {
            Lanes.Put(ref pushed[r], lane, 0);
        }

        foreach (var (row, amps) in problem.Pushed)
        {
            Lanes.Put(ref pushed[row], lane, pushed[row].GetElement(lane) + amps);
        }

        system.Linearise(system.X, lane);
    }

    private void Prepare(Lane scale)
    {
        FillIdleLanes();
        system.AssembleLinear(0, linear);
        AssembleSources(scale);
        system.Evaluate();
    }

    private void AssembleSources(Lane scale)
    {
        system.AssembleSources(swing, scale, sources);
        for (var r = 0; r < pushed.Length; r++)
        {
            sources[r] += scale * pushed[r];
        }
    }

    /// <summary>An empty lane works on a copy of a busy one, so that it never produces NaN of its own.</summary>
    private void FillIdleLanes()
    {
        var busy = Array.FindIndex(inLane, p => p is not null);
        for (var lane = 0; lane < Lanes.Width; lane++)
        {
            if (inLane[lane] is null && busy >= 0)
            {
                for (var s = 0; s < system.Slots.Length; s++)
                {
                    Lanes.Put(ref system.Slots[s], lane, system.Slots[s].GetElement(busy));
                }

                for (var r = 0; r < system.X.Length; r++)
                {
                    Lanes.Put(ref system.X[r], lane, system.X[r].GetElement(busy));
                }

                system.Linearise(system.X, lane);
            }
        }
    }

    private void Newton()
    {
        Array.Copy(linear, system.Factors.Values, linear.Length);
        Array.Copy(sources, system.X, sources.Length);
        system.StampElements(system.Factors.Values, system.X);
        system.Factors.Factor();
        system.Factors.Solve(system.X);
        system.Advance();
        system.Evaluate();
    }

    private void Step(List<StaticProblem> hard)
    {
        Newton();
        var agreeing = system.Agreeing();
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
        problem.Solution = [.. system.X.Select(x => x.GetElement(lane))];
        problem.Settled = true;
        problem.Steps = steps[lane];
        inLane[lane] = null;
    }

    /// <summary>Loads one problem in all lanes, for stepping by the ladder.</summary>
    internal void LoadEverywhere(StaticProblem problem, ReadOnlySpan<double> start)
    {
        for (var s = 0; s < problem.Slots.Length; s++)
        {
            system.Slots[s] = Lanes.All(problem.Slots[s]);
        }

        Array.Clear(pushed);
        foreach (var (row, amps) in problem.Pushed)
        {
            pushed[row] += Lanes.All(amps);
        }

        for (var r = 0; r < start.Length; r++)
        {
            system.X[r] = Lanes.All(start[r]);
        }

        system.Linearise(system.X);
    }

    /// <summary>
    /// Newton from the present point with sources times <paramref name="scale"/> and extra siemens on every net; true when it settles.
    /// </summary>
    internal bool Settle(double scale, double extra, int most, double damping = 1)
    {
        system.Extra = Lanes.All(extra);
        system.AssembleLinear(0, linear);
        AssembleSources(Lanes.All(scale));
        system.Linearise(system.X);
        system.Evaluate();
        var settled = false;
        for (var n = 0; n < most && !settled; n++)
        {
            Lane[] before = damping < 1 ? [.. system.X] : [];
            Newton();
            if (system.Broken() != 0)
            {
                break;
            }

            settled = (system.Agreeing() & 1) != 0;
            if (damping < 1 && !settled)
            {
                for (var r = 0; r < before.Length; r++)
                {
                    system.X[r] = before[r] + (damping * (system.X[r] - before[r]));
                }

                system.Linearise(system.X);
                system.Evaluate();
            }
        }

        system.Extra = Lanes.Zero;
        return settled;
    }

    internal double[] Now() => [.. system.X.Select(x => x.GetElement(0))];
}
