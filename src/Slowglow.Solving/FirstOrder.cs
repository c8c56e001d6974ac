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
    private readonly double[][] solutions = new double[Lanes.Width][];
    private RestReference? holding;
    private int count;

    public FirstOrder(Equations equations) => (this.equations, system) = (equations, new LaneSystem(equations));

    /// <summary>Solves what it can; returns the others in their order.</summary>
    public List<StaticProblem> Sift(IReadOnlyList<StaticProblem> problems, double swing)
    {
        List<StaticProblem> others = new(problems.Count);
        foreach (var problem in problems)
        {
            if (
                problem.Relative is not { } reference
                || reference.Swing != swing
                || Estimate(problem, reference) is not { } solution
            )
            {
                others.Add(problem);
                continue;
            }

            if (holding != reference)
            {
                Judge(others);
                Hold(reference);
            }

            (waiting[count], solutions[count]) = (problem, solution);
            count++;
            if (count == Lanes.Width)
            {
                Judge(others);
            }
        }

        Judge(others);
        return others;
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

    /// <summary>The state to first order when one branch alone differs, else null.</summary>
    private double[]? Estimate(StaticProblem problem, RestReference reference)
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

        return reference.Answers[only].Length == 0 ? null : Estimate(equations.Branches[only], only, problem.Slots, reference);
    }

    private static double[] Estimate(Branch branch, int index, double[] slots, RestReference reference)
    {
        var answer = reference.Answers[index];
        var siemens = RestBranch.Siemens(branch, slots) - RestBranch.Siemens(branch, reference.Slots);
        var source =
            RestBranch.SourceAmps(branch, slots, reference.Swing)
            - RestBranch.SourceAmps(branch, reference.Slots, reference.Swing);
        var amps =
            (source - (siemens * RestBranch.Across(branch, reference.X))) / (1 + (siemens * RestBranch.Across(branch, answer)));
        var solution = new double[answer.Length];
        for (var r = 0; r < solution.Length; r++)
        {
            solution[r] = reference.X[r] + (amps * answer[r]);
        }

        return solution;
    }

    private void Judge(List<StaticProblem> others)
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
            (waiting[lane].Solution, waiting[lane].Settled, waiting[lane].Steps) = (
                solutions[lane],
                (leaving & (1u << lane)) == 0,
                1
            );
        }

        if (leaving != 0)
        {
            Advance(leaving, others);
        }

        count = 0;
    }

    /// <summary>What leaves its tangents goes on from there: the estimate is the first of its Newton steps.</summary>
    private void Advance(uint leaving, List<StaticProblem> others)
    {
        system.Elements.Advance(system.X, system.Slots);
        system.Elements.Evaluate(system.Slots);
        for (var lane = 0; lane < count; lane++)
        {
            if ((leaving & (1u << lane)) != 0)
            {
                waiting[lane].Advanced = system.Elements.Take(lane);
                others.Add(waiting[lane]);
            }
        }

        Return(holding!);
    }
}
