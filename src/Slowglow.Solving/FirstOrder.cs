namespace Slowglow.Solving;

/// <summary>
/// Relatives in which one branch differs, known to first order from the reference's factors alone (Sherman and Morrison, Ann. Math. Stat. 21, 1950).
/// Where no element leaves its tangent on the way, that is the answer: nothing is factored or evaluated.
/// </summary>
internal sealed class FirstOrder
{
    private readonly LaneSystem system;
    private readonly Equations equations;
    private readonly List<int> changed = [];
    private readonly StaticProblem[] waiting = new StaticProblem[Lanes.Width];
    private readonly double[][] solutions;
    private readonly (double[] Volts, double[] Currents, double[] Slopes)[] advanced;
    private readonly Queue<StaticProblem> left = new();
    private IReadOnlyList<StaticProblem> problems = [];
    private RestReference? holding;
    private double swing;
    private int next;
    private int count;

    public FirstOrder(Equations equations)
    {
        this.equations = equations;
        system = new LaneSystem(equations);
        solutions = [.. Enumerable.Range(0, Lanes.Width).Select(_ => new double[equations.Unknowns])];
        advanced = [.. Enumerable.Range(0, Lanes.Width).Select(system.Elements.Take)];
    }

    /// <summary>Begins with other problems; what was left when the last work was cancelled is forgotten.</summary>
    public void Begin(IReadOnlyList<StaticProblem> problems, double swing)
    {
        (this.problems, this.swing, next, count) = (problems, swing, 0, 0);
        left.Clear();
    }

    /// <summary>
    /// Solves what it can on the way to the next problem that it cannot, which is returned; null when there is none. What that problem carries
    /// of a first step is written over once another is asked for.
    /// </summary>
    public StaticProblem? Next()
    {
        while (left.Count == 0 && (next < problems.Count || count > 0))
        {
            if (next < problems.Count)
            {
                Take(problems[next++]);
            }
            else
            {
                Judge();
            }
        }

        return left.TryDequeue(out var problem) ? problem : null;
    }

    private void Take(StaticProblem problem)
    {
        if (problem.Relative is not { } reference || reference.Swing != swing || OnlyBranch(problem, reference) is not { } only)
        {
            left.Enqueue(problem);
            return;
        }

        if (holding != reference)
        {
            Judge();
            Hold(reference);
        }

        Estimate(equations.Branches[only], only, problem.Slots, reference, solutions[count]);
        waiting[count++] = problem;
        if (count == Lanes.Width)
        {
            Judge();
        }
    }

    private void Hold(RestReference reference)
    {
        holding = reference;
        for (var s = 0; s < system.Slots.Length; s++)
        {
            system.Slots[s] = Lanes.All(reference.Slots[s]);
        }

        Return(reference);
    }

    private void Return(RestReference reference) =>
        system.Elements.PutEverywhere(reference.PortVolts, reference.Currents, reference.Slopes);

    /// <summary>The branch that alone differs and is known by its answer, else null.</summary>
    private int? OnlyBranch(StaticProblem problem, RestReference reference)
    {
        RestLoader.Differences(reference.Slots, problem.Slots, changed);
        if (changed.Count == 0 || problem.Pushed.Count > 0)
        {
            return null;
        }

        var only = -1;
        foreach (var slot in changed)
        {
            var uses = equations.Uses.Branches(slot);
            if (equations.Uses.Elements(slot).Length > 0 || uses.Length != 1 || (only >= 0 && only != uses[0]))
            {
                return null;
            }

            only = uses[0];
        }

        return reference.Answers[only].Length == 0 ? null : only;
    }

    private static void Estimate(Branch branch, int index, double[] slots, RestReference reference, double[] solution)
    {
        var answer = reference.Answers[index];
        var siemens = RestBranch.Siemens(branch, slots) - RestBranch.Siemens(branch, reference.Slots);
        var source =
            RestBranch.SourceAmps(branch, slots, reference.Swing)
            - RestBranch.SourceAmps(branch, reference.Slots, reference.Swing);
        var amps =
            (source - (siemens * RestBranch.Across(branch, reference.X))) / (1 + (siemens * RestBranch.Across(branch, answer)));
        for (var r = 0; r < solution.Length; r++)
        {
            solution[r] = reference.X[r] + (amps * answer[r]);
        }
    }

    private void Judge()
    {
        if (count == 0)
        {
            return;
        }

        for (var lane = 0; lane < Lanes.Width; lane++)
        {
            var solution = solutions[Math.Min(lane, count - 1)];
            for (var r = 0; r < solution.Length; r++)
            {
                Lanes.Put(ref system.X[r], lane, solution[r]);
            }
        }

        var leaving = system.Elements.Leaving(system.X, system.Slots);
        for (var lane = 0; lane < count; lane++)
        {
            if ((leaving & (1u << lane)) == 0)
            {
                (waiting[lane].Solution, waiting[lane].Settled, waiting[lane].Steps) = ([.. solutions[lane]], true, 1);
            }
        }

        if (leaving != 0)
        {
            Advance(leaving);
        }

        count = 0;
    }

    /// <summary>What leaves its tangents goes on from there: the estimate is the first of its Newton steps.</summary>
    private void Advance(uint leaving)
    {
        system.Elements.Advance(system.X, system.Slots);
        system.Elements.Evaluate(system.Slots);
        for (var lane = 0; lane < count; lane++)
        {
            if ((leaving & (1u << lane)) != 0)
            {
                system.Elements.Take(lane, advanced[lane]);
                waiting[lane].Advanced = advanced[lane];
                left.Enqueue(waiting[lane]);
            }
        }

        Return(holding!);
    }
}
