using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// Finds the periodic state of worlds driven by a sine: shooting on the states at the zero crossing, with the exact matrix of the
/// period. Four worlds at a time. One for each thread.
/// </summary>
public sealed class CycleSolver
{
    private const int MostNewton = 40;
    private const int DampedNewton = 40;
    private readonly Equations equations;
    private readonly int stepsPerCycle;
    private readonly LaneSystem system;
    private readonly CycleColumns columns;
    private readonly StepRule euler;
    private readonly StepRule second;
    private readonly int parameters;
    private readonly Lane[] steady;
    private readonly Lane[] swinging;
    private readonly Lane[] latest;
    private readonly Lane[] earlier;
    private readonly Lane[] before;
    private readonly Lane[] wave;
    private readonly Lane[] guess;
    private readonly Lane[] rest;
    private uint working;

    /// <param name="stepsPerCycle">Time steps in a period, at least 8.</param>
    /// <param name="parameters">What moves with each random parameter.</param>
    public CycleSolver(Equations equations, int stepsPerCycle, IReadOnlyList<SlotChange[]> parameters)
    {
        this.equations = equations;
        this.stepsPerCycle = stepsPerCycle;
        this.parameters = parameters.Count;
        system = new LaneSystem(equations);
        columns = new CycleColumns(system, parameters);
        euler = StepRule.BackwardEuler(equations);
        second = StepRule.SecondOrder(equations);
        steady = new Lane[equations.Unknowns];
        swinging = new Lane[equations.Unknowns];
        latest = new Lane[columns.States];
        earlier = new Lane[columns.States];
        before = new Lane[equations.Unknowns];
        wave = new Lane[stepsPerCycle * equations.Unknowns];
        guess = new Lane[equations.Unknowns];
        rest = new Lane[equations.Unknowns];
    }

    /// <summary>Solves all problems at <paramref name="frequency"/> hertz.</summary>
    public void Solve(IReadOnlyList<CycleProblem> problems, double frequency, CancellationToken cancel = default)
    {
        var hard = new List<CycleProblem>();
        InGroups(problems, Shooting.SearchCycles, hard);

        // The few that need patience share their lanes, instead of holding up three others each.
        InGroups(hard, Shooting.MostCycles, []);

        void InGroups(IReadOnlyList<CycleProblem> some, int most, List<CycleProblem> unfinished)
        {
            for (var first = 0; first < some.Count; first += Lanes.Width)
            {
                cancel.ThrowIfCancellationRequested();
                var group = new CycleProblem[Lanes.Width];
                for (var lane = 0; lane < Lanes.Width; lane++)
                {
                    group[lane] = some[Math.Min(first + lane, some.Count - 1)];
                }

                SolveGroup(group, 1 / frequency / stepsPerCycle, most, unfinished, cancel);
            }
        }
    }

    private void SolveGroup(CycleProblem[] group, double step, int most, List<CycleProblem> unfinished, CancellationToken cancel)
    {
        for (var s = 0; s < equations.Slots; s++)
        {
            system.Slots[s] = Vector256.Create(group[0].Slots[s], group[1].Slots[s], group[2].Slots[s], group[3].Slots[s]);
        }

        euler.Prepare(system, step);
        second.Prepare(system, step);
        system.AssembleSources(0, Lanes.One, steady);
        system.AssembleSources(1, Lanes.One, swinging);
        for (var r = 0; r < steady.Length; r++)
        {
            swinging[r] -= steady[r];
        }

        var shots = new Shooting[Lanes.Width];
        for (var lane = 0; lane < Lanes.Width; lane++)
        {
            shots[lane] = new Shooting(group[lane], equations);
        }

        for (var cycle = 0; cycle < most && shots.Any(s => !s.Finished); cycle++)
        {
            cancel.ThrowIfCancellationRequested();
            RunCycle(shots, withStates: shots.Any(s => s is { Finished: false, Running: false }), withParameters: false);
            for (var lane = 0; lane < Lanes.Width; lane++)
            {
                shots[lane].Judge(columns, latest, system.X, lane, (working & (1u << lane)) != 0);
            }
        }

        if (most < Shooting.MostCycles)
        {
            unfinished.AddRange(group.Distinct().Where((p, _) => !shots[Array.IndexOf(group, p)].Finished));
        }

        var spread = group.Any(p => p.WithSpread);
        RunCycle(shots, spread, spread);
        for (var lane = 0; lane < Lanes.Width; lane++)
        {
            Unload(group[lane], shots[lane], lane, spread && group[lane].WithSpread);
        }
    }

    private void RunCycle(Shooting[] shots, bool withStates, bool withParameters)
    {
        for (var m = 0; m < latest.Length; m++)
        {
            latest[m] = Vector256.Create(shots[0].States[m], shots[1].States[m], shots[2].States[m], shots[3].States[m]);
            earlier[m] = latest[m];
        }

        for (var r = 0; r < before.Length; r++)
        {
            system.X[r] = Vector256.Create(shots[0].Start[r], shots[1].Start[r], shots[2].Start[r], shots[3].Start[r]);
            before[r] = system.X[r];
        }

        working = 0xF;
        columns.Begin(withParameters);
        for (var k = 1; k <= stepsPerCycle; k++)
        {
            var rule = k == 1 ? euler : second;
            var swing = Math.Sin(2 * Math.PI * k / stepsPerCycle);
            TimeStep(rule, swing, k);
            if (withStates)
            {
                columns.Step(rule, swing, latest, earlier, 1.0 / stepsPerCycle);
            }

            rule.Update(system.X, latest, earlier);
            system.X.CopyTo(wave.AsSpan((k - 1) * system.X.Length));
        }
    }

    private void TimeStep(StepRule rule, double swing, int k)
    {
        var n = system.X.Length;
        for (var r = 0; r < n; r++)
        {
            guess[r] = k > 2 ? (2 * system.X[r]) - before[r] : system.X[r];
            before[r] = system.X[r];
        }

        var settled = Newton(rule, swing, guess, MostNewton);
        if (settled != working)
        {
            // Extrapolation past a kink misleads: once more from the last step itself.
            settled |= Newton(rule, swing, before, MostNewton);
        }

        if (settled != working)
        {
            settled |= Newton(rule, swing, before, MostNewton, DampedNewton);
            working &= settled;
        }

        FactorAtSolution(rule);
    }

    /// <summary>Newton at one instant; returns the lanes that settled.</summary>
    private uint Newton(StepRule rule, double swing, ReadOnlySpan<Lane> guess, int most, int damped = 0)
    {
        for (var r = 0; r < rest.Length; r++)
        {
            rest[r] = steady[r] + (swing * swinging[r]);
        }

        rule.PushHistory(latest, earlier, rest);
        system.Linearise(guess);
        system.Evaluate();
        Damp(rule, guess, damped);
        uint settled = 0;
        for (var n = 0; n < most; n++)
        {
            Stamp(rule);
            system.Factors.Factor();
            system.Factors.Solve(system.X);
            system.Advance();
            system.Evaluate();
            settled = system.Agreeing();
            if ((settled & working) == working)
            {
                break;
            }
        }

        return settled & working;
    }

    /// <summary>Factors of the settled point, for the columns.</summary>
    private void FactorAtSolution(StepRule rule)
    {
        Array.Copy(rule.Linear, system.Factors.Values, rule.Linear.Length);
        system.StampElements(system.Factors.Values, rest);
        system.Factors.Factor();
    }

    /// <summary>Third steps only, without judging: out of a ring that full steps run round in.</summary>
    private void Damp(StepRule rule, ReadOnlySpan<Lane> guess, int steps)
    {
        Span<Lane> from = stackalloc Lane[steps > 0 ? guess.Length : 0];
        guess[..from.Length].CopyTo(from);
        for (var n = 0; n < steps; n++)
        {
            Stamp(rule);
            system.Factors.Factor();
            system.Factors.Solve(system.X);
            for (var r = 0; r < from.Length; r++)
            {
                from[r] += (1.0 / 3) * (system.X[r] - from[r]);
                system.X[r] = from[r];
            }

            system.Advance();
            system.Evaluate();
        }
    }

    private void Stamp(StepRule rule)
    {
        Array.Copy(rule.Linear, system.Factors.Values, rule.Linear.Length);
        Array.Copy(rest, system.X, rest.Length);
        system.StampElements(system.Factors.Values, system.X);
    }

    private void Unload(CycleProblem problem, Shooting shot, int lane, bool spread)
    {
        var n = equations.Unknowns;
        problem.Settled = shot.Settled && (working & (1u << lane)) != 0;
        problem.Cycles = shot.Cycles;
        problem.Restless = shot.Restless;
        problem.States = shot.States;
        problem.End = [.. system.X.Select(x => x.GetElement(lane))];
        problem.Wave = new float[wave.Length];
        problem.Mean = new double[n];
        for (var i = 0; i < wave.Length; i++)
        {
            var v = wave[i].GetElement(lane);
            problem.Wave[i] = (float)v;
            problem.Mean[i % n] += v / stepsPerCycle;
        }

        if (spread && problem.Settled)
        {
            UnloadSpread(problem, lane);
        }
    }

    private void UnloadSpread(CycleProblem problem, int lane)
    {
        var n = equations.Unknowns;
        var m = columns.States;
        var matrix = Shooting.PeriodMatrix(columns, lane);
        var moved = new double[m * parameters];
        for (var p = 0; p < parameters; p++)
        {
            for (var s = 0; s < m; s++)
            {
                moved[(s * parameters) + p] = columns.End(m + p, s).GetElement(lane);
            }
        }

        if (!DenseSolve.InPlace(matrix, moved, m, parameters))
        {
            return;
        }

        var rms = Rms(problem);
        problem.MeanSpread = new float[parameters * n];
        problem.RmsSpread = new float[parameters * n];
        for (var p = 0; p < parameters; p++)
        {
            for (var r = 0; r < n; r++)
            {
                var mean = columns.MeanOf[((m + p) * n) + r].GetElement(lane);
                var product = columns.ProductOf[((m + p) * n) + r].GetElement(lane);
                for (var s = 0; s < m; s++)
                {
                    var along = moved[(s * parameters) + p];
                    mean += columns.MeanOf[(s * n) + r].GetElement(lane) * along;
                    product += columns.ProductOf[(s * n) + r].GetElement(lane) * along;
                }

                problem.MeanSpread[(p * n) + r] = (float)mean;
                var swing = product - (problem.Mean[r] * mean);
                problem.RmsSpread[(p * n) + r] = rms[r] > 0 ? (float)(swing / rms[r]) : 0;
            }
        }
    }

    private double[] Rms(CycleProblem problem)
    {
        var n = equations.Unknowns;
        var squares = new double[n];
        for (var i = 0; i < problem.Wave.Length; i++)
        {
            var d = problem.Wave[i] - problem.Mean[i % n];
            squares[i % n] += d * d / stepsPerCycle;
        }

        return [.. squares.Select(Math.Sqrt)];
    }
}
