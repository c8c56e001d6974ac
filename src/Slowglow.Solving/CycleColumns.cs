namespace Slowglow.Solving;

/// <summary>
/// Directions that are followed through a cycle beside the worlds themselves: one for each state at the start (their ends make the
/// period's matrix) and, when asked for, one for each parameter. Where all lanes carry the same world, four directions share them.
/// </summary>
internal sealed class CycleColumns
{
    private readonly LaneSystem system;
    private readonly Equations equations;
    private readonly ParameterMap map;
    private readonly IReadOnlyList<SlotChange[]> parameters;
    private readonly int injections;
    private readonly int[] stateOfBranch;
    private readonly Lane[] x;

    // Four directions of one world, or one direction of four worlds, to a row: [row * states + state] and [row * unknowns + unknown].
    private Lane[] latest = [];
    private Lane[] earlier = [];
    private Lane[] mean = [];
    private Lane[] product = [];
    private Lane[] watched = [];

    /// <summary>One: an object that holds a register itself is not compiled ahead.</summary>
    private readonly Lane[] watchedSquare = new Lane[1];
    private int abreast = 1;
    private bool summing;

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

        x = new Lane[equations.Unknowns];
    }

    public int States { get; }

    /// <summary>A conductance branch whose current is followed along the columns as well; -1 for none.</summary>
    public int Watched { get; init; } = -1;

    /// <summary>Columns followed in the present cycle.</summary>
    public int Count { get; private set; }

    /// <param name="alone">All lanes carry the same world.</param>
    public void Begin(bool withParameters, bool alone)
    {
        summing = withParameters;
        abreast = alone ? Lanes.Width : 1;
        Count = States + (withParameters ? parameters.Count + injections : 0);
        latest = Cleared(latest, States);
        earlier = Cleared(earlier, States);
        for (var m = 0; m < States; m++)
        {
            latest[(m / abreast * States) + m] = Lanes.One & Share(m);
        }

        if (withParameters)
        {
            mean = Cleared(mean, x.Length);
            product = Cleared(product, x.Length);
            watched = Cleared(watched, 1);
            watchedSquare[0] = Lanes.Zero;
        }
    }

    /// <summary>State m of a lane's world at the end of the cycle along a column.</summary>
    public double End(int column, int m, int lane) => Of(latest, column, States, m, lane);

    /// <summary>Mean of an unknown over the cycle along a column, in a lane's world.</summary>
    public double Mean(int column, int unknown, int lane) => Of(mean, column, x.Length, unknown, lane);

    /// <summary>Mean of the product with the unknown itself.</summary>
    public double Product(int column, int unknown, int lane) => Of(product, column, x.Length, unknown, lane);

    /// <summary>Change of the watched current's rms along a column, in a lane's world; amperes.</summary>
    public double WatchedChange(int column, int lane) => Of(watched, column, 1, 0, lane) / WatchedRms(lane);

    /// <summary>Rms of the watched current, amperes.</summary>
    public double WatchedRms(int lane) => Math.Sqrt(Lanes.Get(in watchedSquare[0], lane));

    /// <summary>Takes all columns through a step whose factors stand in the system.</summary>
    /// <param name="worldLatest">States of the worlds before the step.</param>
    /// <param name="worldEarlier">And one step before that.</param>
    public void Step(StepRule rule, double swing, ReadOnlySpan<Lane> worldLatest, ReadOnlySpan<Lane> worldEarlier, double share)
    {
        for (var row = 0; row * abreast < Count; row++)
        {
            var mine = latest.AsSpan(row * States, States);
            var past = earlier.AsSpan(row * States, States);
            var end = Math.Min(Count, (row + 1) * abreast);
            Array.Clear(x);
            rule.PushHistory(mine, past, x);
            for (var c = row * abreast; c < end; c++)
            {
                foreach (var change in ChangesOf(c))
                {
                    PushEffect(change, rule, swing, worldLatest, worldEarlier, Share(c));
                }

                if (c >= States + parameters.Count)
                {
                    x[c - States - parameters.Count] += Lanes.One & Share(c);
                }
            }

            system.Factors.Solve(x);
            rule.Update(x, mine, past);
            for (var c = row * abreast; c < end; c++)
            {
                CorrectStates(ChangesOf(c), rule, worldLatest, worldEarlier, mine, Share(c));
            }

            if (summing)
            {
                Sum(row, share);
                Watch(row, rule, swing, worldLatest, worldEarlier, share);
            }
        }
    }

    private SlotChange[] ChangesOf(int column) =>
        column >= States && column < States + parameters.Count ? parameters[column - States] : [];

    /// <summary>The lanes that a column has to itself.</summary>
    private Lane Share(int column) => Lanes.Mask(abreast == 1 ? 0xF : 1u << (column % abreast));

    private Lane[] Cleared(Lane[] table, int width)
    {
        var size = (Count + abreast - 1) / abreast * width;
        if (table.Length < size)
        {
            return new Lane[size];
        }

        Array.Clear(table);
        return table;
    }

    private double Of(Lane[] table, int column, int width, int at, int lane) =>
        Lanes.Get(in table[(column / abreast * width) + at], abreast == 1 ? lane : column % abreast);

    private void Sum(int row, double share)
    {
        var n = x.Length;
        var means = mean.AsSpan(row * n, n);
        var products = product.AsSpan(row * n, n);
        for (var r = 0; r < n; r++)
        {
            var part = share * x[r];
            means[r] += part;
            products[r] += part * system.X[r];
        }
    }

    private void Watch(
        int row,
        StepRule rule,
        double swing,
        ReadOnlySpan<Lane> worldLatest,
        ReadOnlySpan<Lane> worldEarlier,
        double share
    )
    {
        if (Watched < 0)
        {
            return;
        }

        var branch = equations.Branches[Watched];
        var siemens = system.Slots[branch.Slot];
        var amps = siemens * (LaneSystem.Across(branch, system.X) - system.SourceOf(branch, swing));
        var moved = siemens * LaneSystem.Across(branch, x);
        for (var c = row * abreast; c < Math.Min(Count, (row + 1) * abreast); c++)
        {
            foreach (var change in ChangesOf(c))
            {
                // What the branch's own slots push into its nets, they take from its current.
                var (use, index, _) = map[change.Slot];
                if (use is not (ParameterMap.Use.None or ParameterMap.Use.Constant) && index == Watched)
                {
                    var amount = (change.Relative * system.Slots[change.Slot]) + Lanes.All(change.Absolute);
                    moved -= Share(c) & BranchEffect(use, index, amount, rule, swing, worldLatest, worldEarlier);
                }
            }
        }

        watched[row] += share * moved * amps;
        if (row == 0)
        {
            watchedSquare[0] += share * amps * amps;
        }
    }

    private void PushEffect(
        SlotChange change,
        StepRule rule,
        double swing,
        ReadOnlySpan<Lane> worldLatest,
        ReadOnlySpan<Lane> worldEarlier,
        in Lane share
    )
    {
        var (use, index, constant) = map[change.Slot];
        var amount = (change.Relative * system.Slots[change.Slot]) + Lanes.All(change.Absolute);
        switch (use)
        {
            case ParameterMap.Use.None:
                break;
            case ParameterMap.Use.Constant:
                PushConstant(index, constant, amount, share);
                break;
            default:
                var branch = equations.Branches[index];
                LaneSystem.Push(branch, share & BranchEffect(use, index, amount, rule, swing, worldLatest, worldEarlier), x);
                break;
        }
    }

    private Lane BranchEffect(
        ParameterMap.Use use,
        int index,
        in Lane amount,
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

    private Lane FlowChange(ParameterMap.Use use, Branch branch, in Lane amount, StepRule rule, int m, in Lane u, in Lane history)
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
        Span<Lane> mine,
        in Lane share
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
            mine[m] += share & FlowChange(use, branch, amount, rule, m, LaneSystem.Across(branch, system.X), history);
        }
    }

    private void PushConstant(int element, int constant, in Lane amount, in Lane share)
    {
        var rows = equations.Elements[element].Rows;
        Span<Lane> effect = stackalloc Lane[rows.Length - 1];
        system.Elements.ConstantEffect(element, constant, amount, system.Slots, effect);
        for (var p = 0; p < effect.Length; p++)
        {
            var own = share & effect[p];
            AddAt(rows[p], -own);
            AddAt(rows[^1], own);
        }
    }

    private void AddAt(int row, in Lane value)
    {
        if (row >= 0)
        {
            x[row] += value;
        }
    }
}
