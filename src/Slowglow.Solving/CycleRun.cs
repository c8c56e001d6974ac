using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// Takes four worlds side by side through one cycle of a sine. A lane's worlds can be changed between cycles. Each instant is
/// foretold from the wave of the cycle before (or of a relative), so that Newton has little left to do.
/// </summary>
internal sealed class CycleRun
{
    private const int MostNewton = 40;
    private const int DampedNewton = 40;
    private static readonly double[] Holding = [1, 0.1, 1e-2, 1e-3, 1e-4, 1e-6, 0];
    private readonly StepRule euler;
    private readonly StepRule second;
    private readonly Lane[] steady;
    private readonly Lane[] swinging;
    private readonly Lane[] earlier;
    private readonly Lane[] before;
    private readonly Lane[] ahead;
    private readonly Lane[] guess;
    private readonly Lane[] rest;
    private readonly Lane[] held;
    private Lane foretold = Lanes.Zero;

    /// <summary>Lanes with a world that no element has been evaluated for.</summary>
    private Lane anew = Lanes.Mask(0xF);

    public CycleRun(Equations equations, int steps, IReadOnlyList<SlotChange[]> parameters, int injections = 0, int watched = -1)
    {
        Steps = steps;
        System = new LaneSystem(equations);
        Columns = new CycleColumns(System, parameters, injections) { Watched = watched };
        euler = StepRule.BackwardEuler(equations);
        second = StepRule.SecondOrder(equations);
        steady = new Lane[equations.Unknowns];
        swinging = new Lane[equations.Unknowns];
        States = new Lane[Columns.States];
        earlier = new Lane[Columns.States];
        before = new Lane[equations.Unknowns];
        ahead = new Lane[equations.Unknowns];
        Wave = new Lane[steps * equations.Unknowns];
        guess = new Lane[equations.Unknowns];
        rest = new Lane[equations.Unknowns];
        held = new Lane[equations.Unknowns];
    }

    public int Steps { get; }

    /// <summary>All lanes carry the same world. To be said when lanes are loaded.</summary>
    public bool Alone { get; set; }
    public LaneSystem System { get; }
    public CycleColumns Columns { get; }

    /// <summary>States: at the start before <see cref="Go"/>, at the end after it.</summary>
    public Lane[] States { get; }

    /// <summary>[step * unknowns + unknown].</summary>
    public Lane[] Wave { get; }

    /// <summary>Whether instants that Newton cannot find are eased into, at the risk of another state than the one the world was in.</summary>
    public bool Easing { get; set; }

    /// <summary>Lanes that came through the last cycle (bit per lane).</summary>
    public uint Working { get; private set; }

    /// <summary>Puts a world into a lane, with the wave that it is known by or else that of its relative.</summary>
    public void Load(int lane, CycleProblem problem)
    {
        for (var s = 0; s < problem.Slots.Length; s++)
        {
            Lanes.Put(ref System.Slots[s], lane, problem.Slots[s]);
        }

        anew |= Lanes.Mask(1u << lane);
        var own = problem.Settled && problem.Wave.Length == Wave.Length;
        var relative = problem.Relative?.Wave;
        Lanes.Put(ref foretold, lane, own || relative is not null ? BitConverter.Int64BitsToDouble(-1) : 0);
        for (var i = 0; (own || relative is not null) && i < Wave.Length; i++)
        {
            Lanes.Put(ref Wave[i], lane, own ? problem.Wave[i] : relative![i]);
        }

        Begin(lane, problem.States, problem.Start);
    }

    /// <summary>Sets where a lane begins its next cycle.</summary>
    public void Begin(int lane, double[] states, double[] start)
    {
        for (var m = 0; m < States.Length; m++)
        {
            Lanes.Put(ref States[m], lane, states[m]);
        }

        for (var r = 0; r < start.Length; r++)
        {
            Lanes.Put(ref System.X[r], lane, start[r]);
        }
    }

    /// <summary>To be called when lanes were loaded.</summary>
    public void Prepare(double step)
    {
        euler.Prepare(System, step);
        second.Prepare(System, step);
        System.AssembleSources(0, Lanes.One, steady);
        System.AssembleSources(1, Lanes.One, swinging);
        for (var r = 0; r < steady.Length; r++)
        {
            swinging[r] -= steady[r];
        }
    }

    /// <summary>One cycle of all lanes.</summary>
    public void Go(bool withStates, bool withParameters)
    {
        States.CopyTo(earlier, 0);
        var n = System.X.Length;
        var end = Wave.AsSpan(Wave.Length - n);
        for (var r = 0; r < n; r++)
        {
            before[r] = System.X[r];
            ahead[r] = System.X[r] - end[r];
        }

        Working = 0xF;
        Columns.Begin(withParameters, Alone);
        for (var k = 1; k <= Steps; k++)
        {
            var rule = k == 1 ? euler : second;
            var swing = Math.Sin(2 * Math.PI * k / Steps);
            TimeStep(rule, swing, k);
            if (withStates)
            {
                FactorAtSolution(rule);
                Columns.Step(rule, swing, States, earlier, 1.0 / Steps);
            }

            rule.Update(System.X, States, earlier);
            var now = Wave.AsSpan((k - 1) * n, n);
            for (var r = 0; r < n; r++)
            {
                ahead[r] = System.X[r] - now[r];
                now[r] = System.X[r];
            }
        }

        // From now on every lane that came through has a cycle behind it.
        foretold = Lanes.Mask(Working);
    }

    private void TimeStep(StepRule rule, double swing, int k)
    {
        var n = System.X.Length;
        var old = Wave.AsSpan((k - 1) * n, n);
        for (var r = 0; r < n; r++)
        {
            var straight = k > 2 ? (2 * System.X[r]) - before[r] : System.X[r];
            guess[r] = Lanes.Choose(foretold, old[r] + ahead[r], straight);
            before[r] = System.X[r];
        }

        var settled = Newton(rule, swing, guess, MostNewton);
        if ((settled & Working) != Working)
        {
            // A guess past a kink misleads: once more from the last step itself.
            settled |= Newton(rule, swing, before, MostNewton, settled);
        }

        if ((settled & Working) != Working)
        {
            settled |= Newton(rule, swing, before, MostNewton, settled, DampedNewton);
        }

        if (Easing && (settled & Working) != Working)
        {
            settled |= Eased(rule, settled);
        }

        Working &= settled;
    }

    /// <summary>Newton at one instant; returns the lanes that settled. A lane that has settled stands still while the others go on.</summary>
    private uint Newton(StepRule rule, double swing, ReadOnlySpan<Lane> from, int most, uint standing = 0, int damped = 0)
    {
        for (var r = 0; r < rest.Length; r++)
        {
            rest[r] = steady[r] + (swing * swinging[r]);
        }

        rule.PushHistory(States, earlier, rest);
        if (standing != 0)
        {
            System.X.CopyTo(held, 0);
        }

        System.Elements.LineariseNear(from, System.Slots, anew);
        anew = Lanes.Zero;
        System.Elements.Evaluate(System.Slots);
        Damp(rule, from, damped);
        for (var n = 0; n < most; n++)
        {
            Stamp(rule);
            System.Factors.Factor();
            System.Factors.Solve(System.X);
            Keep(standing);
            System.Elements.Advance(System.X, System.Slots);
            System.Elements.Evaluate(System.Slots);
            standing |= System.Elements.Agreeing();
            if ((standing & Working) == Working)
            {
                break;
            }

            System.X.CopyTo(held, 0);
        }

        return standing;
    }

    /// <summary>
    /// For an instant that Newton cannot find: every unknown is held to where it was by siemens that are taken away by and by, and each stage begins
    /// where the one before ended. Returns the lanes that settled.
    /// </summary>
    private uint Eased(StepRule rule, uint standing)
    {
        System.X.CopyTo(held, 0);
        before.CopyTo(guess, 0);
        System.Elements.LineariseNear(before, System.Slots, Lanes.Mask(~standing & 0xF));
        System.Elements.Evaluate(System.Slots);
        foreach (var siemens in Holding)
        {
            var agreeing = standing;
            for (var n = 0; n < MostNewton && (agreeing & Working) != Working; n++)
            {
                Stamp(rule);
                Hold(siemens);
                System.Factors.Factor();
                System.Factors.Solve(System.X);
                Keep(standing);
                System.Elements.Advance(System.X, System.Slots);
                System.Elements.Evaluate(System.Slots);
                agreeing = standing | System.Elements.Agreeing();
                System.X.CopyTo(held, 0);
            }

            standing |= siemens == 0 ? agreeing : 0;
            System.X.CopyTo(guess, 0);
        }

        return standing;
    }

    private void Hold(double siemens)
    {
        for (var r = 0; r < guess.Length; r++)
        {
            System.Factors.Values[System.Equations.Pattern.Diagonal[r]] += Lanes.All(siemens);
            System.X[r] += siemens * guess[r];
        }
    }

    private void Keep(uint standing)
    {
        if (standing == 0)
        {
            return;
        }

        var mask = Lanes.Mask(standing);
        for (var r = 0; r < held.Length; r++)
        {
            System.X[r] = Lanes.Choose(mask, held[r], System.X[r]);
        }
    }

    /// <summary>Factors of the settled point, for the columns: their slopes must be the solution's own, not those it was reached by.</summary>
    private void FactorAtSolution(StepRule rule)
    {
        System.Elements.Linearise(System.X);
        System.Elements.Evaluate(System.Slots);
        Array.Copy(rule.Linear, System.Factors.Values, rule.Linear.Length);
        System.Elements.Stamp(System.Factors.Values, rest);
        System.Factors.Factor();
    }

    /// <summary>Third steps only, without judging: out of a ring that full steps run round in.</summary>
    private void Damp(StepRule rule, ReadOnlySpan<Lane> start, int steps)
    {
        Span<Lane> from = stackalloc Lane[steps > 0 ? start.Length : 0];
        start[..from.Length].CopyTo(from);
        for (var n = 0; n < steps; n++)
        {
            Stamp(rule);
            System.Factors.Factor();
            System.Factors.Solve(System.X);
            for (var r = 0; r < from.Length; r++)
            {
                from[r] += (1.0 / 3) * (System.X[r] - from[r]);
                System.X[r] = from[r];
            }

            System.Elements.Advance(System.X, System.Slots);
            System.Elements.Evaluate(System.Slots);
        }
    }

    private void Stamp(StepRule rule)
    {
        Array.Copy(rule.Linear, System.Factors.Values, rule.Linear.Length);
        Array.Copy(rest, System.X, rest.Length);
        System.Elements.Stamp(System.Factors.Values, System.X);
    }
}
