namespace Slowglow.Solving;

/// <summary>
/// Directions that are followed through a cycle beside the worlds themselves: one for each state at the start (their ends make the
/// period's matrix) and, when asked for, one for each parameter.
/// </summary>
internal sealed class CycleColumns
{
    private readonly LaneSystem system;
    private readonly Equations equations;
    private readonly ParameterMap map;
    private readonly IReadOnlyList<SlotChange[]> parameters;
    private readonly int injections;
    private readonly int[] stateOfBranch;
    private readonly Lane[] latest;
    private readonly Lane[] earlier;
    private readonly Lane[] x;

    /// <param name="injections">How many unknowns, from the first, are driven with a steady ampere each, behind the parameters.</param>
    public CycleColumns(LaneSystem system, IReadOnlyList<SlotChange[]> parameters, int injections = 0)
    {
        this.system = system;
        this.parameters = parameters;
        this.injections = injections;
        equations = system.Equations;
        map = new ParameterMap(equations);
        States = equations.StorageBranches.Count;
        stateOfBranch = new int[equations.Branches.Count];
        for (var m = 0; m < States; m++)
        {
            stateOfBranch[equations.StorageBranches[m]] = m;
        }

        var most = States + parameters.Count + injections;
        latest = new Lane[most * States];
        earlier = new Lane[most * States];
        x = new Lane[equations.Unknowns];
        MeanOf = new Lane[most * equations.Unknowns];
        ProductOf = new Lane[most * equations.Unknowns];
    }

    public int States { get; }

    /// <summary>Columns followed in the present cycle.</summary>
    public int Count { get; private set; }
    private bool summing;

    /// <summary>Mean of every column's unknowns over the cycle: [column * unknowns + unknown].</summary>
    public Lane[] MeanOf { get; }

    /// <summary>Mean of the product with the unknown itself, same shape.</summary>
    public Lane[] ProductOf { get; }

    public void Begin(bool withParameters)
    {
        summing = withParameters;
        Count = States + (withParameters ? parameters.Count + injections : 0);
        Array.Clear(latest);
        Array.Clear(earlier);
        for (var m = 0; m < States; m++)
        {
            latest[(m * States) + m] = Lanes.One;
        }

        if (withParameters)
        {
            Array.Clear(MeanOf);
            Array.Clear(ProductOf);
        }
    }

    /// <summary>State m at the end of the cycle along a column.</summary>
    public Lane End(int column, int m) => latest[(column * States) + m];

    /// <summary>Takes all columns through a step whose factors stand in the system.</summary>
    /// <param name="worldLatest">States of the worlds before the step.</param>
    /// <param name="worldEarlier">And one step before that.</param>
    public void Step(StepRule rule, double swing, ReadOnlySpan<Lane> worldLatest, ReadOnlySpan<Lane> worldEarlier, double share)
    {
        for (var c = 0; c < Count; c++)
        {
            var mine = latest.AsSpan(c * States, States);
            var past = earlier.AsSpan(c * States, States);
            Array.Clear(x);
            rule.PushHistory(mine, past, x);
            var changes = c >= States && c < States + parameters.Count ? parameters[c - States] : [];
            foreach (var change in changes)
            {
                PushEffect(change, rule, swing, worldLatest, worldEarlier);
            }

            if (c >= States + parameters.Count)
            {
                x[c - States - parameters.Count] += Lanes.One;
            }

            system.Factors.Solve(x);
            rule.Update(x, mine, past);
            CorrectStates(changes, rule, worldLatest, worldEarlier, mine);

            if (summing)
            {
                Sum(c, share);
            }
        }
    }

    private void Sum(int column, double share)
    {
        var n = x.Length;
        var mean = MeanOf.AsSpan(column * n, n);
        var product = ProductOf.AsSpan(column * n, n);
        for (var r = 0; r < n; r++)
        {
            var part = share * x[r];
            mean[r] += part;
            product[r] += part * system.X[r];
        }
    }

    private void PushEffect(
        SlotChange change,
        StepRule rule,
        double swing,
        ReadOnlySpan<Lane> worldLatest,
        ReadOnlySpan<Lane> worldEarlier
    )
    {
        var (use, index, constant) = map[change.Slot];
        var amount = (change.Relative * system.Slots[change.Slot]) + Lanes.All(change.Absolute);
        switch (use)
        {
            case ParameterMap.Use.None:
                break;
            case ParameterMap.Use.Constant:
                PushConstant(index, constant, amount);
                break;
            default:
                var branch = equations.Branches[index];
                LaneSystem.Push(branch, BranchEffect(use, index, amount, rule, swing, worldLatest, worldEarlier), x);
                break;
        }
    }

    private Lane BranchEffect(
        ParameterMap.Use use,
        int index,
        Lane amount,
        StepRule rule,
        double swing,
        ReadOnlySpan<Lane> worldLatest,
        ReadOnlySpan<Lane> worldEarlier
    )
    {
        var branch = equations.Branches[index];
        var u = LaneSystem.Across(branch, system.X);
        switch (use)
        {
            case ParameterMap.Use.Siemens:
                return -amount * (u - system.SourceOf(branch, swing));
            case ParameterMap.Use.SteadySource:
                return amount * system.Slots[branch.Slot];
            case ParameterMap.Use.SwingSource:
                return amount * system.Slots[branch.Slot] * swing;
        }

        var m = stateOfBranch[index];
        var history = rule.History(worldLatest[m], worldEarlier[m]);
        if (use == ParameterMap.Use.Farads)
        {
            return -amount * ((rule.Rate * u) - history);
        }

        // Flow: the change of its current at fixed volts, pushed back into the nets.
        return -FlowChange(use, branch, amount, rule, m, u, history);
    }

    private Lane FlowChange(ParameterMap.Use use, Branch branch, Lane amount, StepRule rule, int m, Lane u, Lane history)
    {
        var siemens = rule.SiemensOf(m);
        var current = siemens * (u + (system.Slots[branch.SteadySlot] * history));
        var volts = use == ParameterMap.Use.FlowOhms ? -current : history - (rule.Rate * current);
        return siemens * amount * volts;
    }

    /// <summary>A flow branch's own parameter also changes its state directly.</summary>
    private void CorrectStates(
        SlotChange[] changes,
        StepRule rule,
        ReadOnlySpan<Lane> worldLatest,
        ReadOnlySpan<Lane> worldEarlier,
        Span<Lane> mine
    )
    {
        foreach (var change in changes)
        {
            var (use, index, _) = map[change.Slot];
            if (use is not (ParameterMap.Use.FlowOhms or ParameterMap.Use.Henries))
            {
                continue;
            }

            var branch = equations.Branches[index];
            var m = stateOfBranch[index];
            var amount = (change.Relative * system.Slots[change.Slot]) + Lanes.All(change.Absolute);
            var history = rule.History(worldLatest[m], worldEarlier[m]);
            mine[m] += FlowChange(use, branch, amount, rule, m, LaneSystem.Across(branch, system.X), history);
        }
    }

    private void PushConstant(int element, int constant, Lane amount)
    {
        var rows = equations.Elements[element].Rows;
        Span<Lane> effect = stackalloc Lane[rows.Length - 1];
        system.Elements.ConstantEffect(element, constant, amount, system.Slots, effect);
        for (var p = 0; p < effect.Length; p++)
        {
            AddAt(rows[p], -effect[p]);
            AddAt(rows[^1], effect[p]);
        }
    }

    private void AddAt(int row, Lane value)
    {
        if (row >= 0)
        {
            x[row] += value;
        }
    }
}
