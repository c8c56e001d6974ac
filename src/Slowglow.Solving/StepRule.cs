namespace Slowglow.Solving;

/// <summary>
/// A rule of time stepping for the four worlds loaded: the linear matrix it needs and how states enter and leave. Backward Euler for
/// the first step of a cycle (it needs one past state only), the second-order backward formula for the rest.
/// </summary>
internal sealed class StepRule
{
    private readonly Equations equations;
    private readonly double rateOverStep;
    private readonly double first;
    private readonly double second;
    private readonly Lane[] push;
    private readonly Lane[] perVolt;
    private readonly Lane[] perHistory;

    // Rows and weights of the branches with states, end to end: this is walked through for every column at every step.
    private readonly int[] start;
    private readonly int[] rows;
    private readonly double[] weights;

    private StepRule(Equations equations, double rateOverStep, double first, double second)
    {
        (this.equations, this.rateOverStep, this.first, this.second) = (equations, rateOverStep, first, second);
        var branches = equations.StorageBranches.Select(b => equations.Branches[b]).ToList();
        push = new Lane[branches.Count];
        perVolt = new Lane[branches.Count];
        perHistory = new Lane[branches.Count];
        start = new int[branches.Count + 1];
        for (var m = 0; m < branches.Count; m++)
        {
            start[m + 1] = start[m] + branches[m].Rows.Length;
        }

        rows = [.. branches.SelectMany(b => b.Rows)];
        weights = [.. branches.SelectMany(b => b.Weights)];
    }

    public static StepRule BackwardEuler(Equations equations) => new(equations, 1, 1, 0);

    public static StepRule SecondOrder(Equations equations) => new(equations, 1.5, 2, -0.5);

    public Lane[] Linear { get; private set; } = [];

    /// <summary>d/dt = Rate s - history.</summary>
    public double Rate { get; private set; }
    private double firstWeight;
    private double secondWeight;

    public void Prepare(LaneSystem system, double step)
    {
        if (Linear.Length == 0)
        {
            Linear = new Lane[system.Factors.Values.Length];
        }

        Rate = rateOverStep / step;
        firstWeight = first / step;
        secondWeight = second / step;
        system.AssembleLinear(Rate, Linear);
        for (var m = 0; m < push.Length; m++)
        {
            var branch = equations.Branches[equations.StorageBranches[m]];
            if (branch.Kind == BranchKind.Storage)
            {
                (push[m], perVolt[m], perHistory[m]) = (system.Slots[branch.Slot], Lanes.One, Lanes.Zero);
            }
            else
            {
                var henries = system.Slots[branch.SteadySlot];
                var siemens = Lanes.One / (system.Slots[branch.Slot] + (Rate * henries));
                (push[m], perVolt[m], perHistory[m]) = (-henries * siemens, siemens, henries * siemens);
            }
        }
    }

    /// <summary>The past's part of d/dt.</summary>
    public Lane History(in Lane latest, in Lane earlier) => (firstWeight * latest) + (secondWeight * earlier);

    /// <summary>Pushes the past of all states into a right side.</summary>
    public void PushHistory(ReadOnlySpan<Lane> latest, ReadOnlySpan<Lane> earlier, Span<Lane> rightSide)
    {
        for (var m = 0; m < push.Length; m++)
        {
            var current = push[m] * History(latest[m], earlier[m]);
            for (var k = start[m]; k < start[m + 1]; k++)
            {
                rightSide[rows[k]] += weights[k] * current;
            }
        }
    }

    /// <summary>New states from the unknowns; the latest become the earlier.</summary>
    public void Update(ReadOnlySpan<Lane> x, Span<Lane> latest, Span<Lane> earlier)
    {
        for (var m = 0; m < push.Length; m++)
        {
            var across = Lanes.Zero;
            for (var k = start[m]; k < start[m + 1]; k++)
            {
                across += weights[k] * x[rows[k]];
            }

            var next = (perVolt[m] * across) + (perHistory[m] * History(latest[m], earlier[m]));
            earlier[m] = latest[m];
            latest[m] = next;
        }
    }

    /// <summary>Adds a change to a state that came about within the step (not through the unknowns).</summary>
    public Lane SiemensOf(int state) => perVolt[state];
}
