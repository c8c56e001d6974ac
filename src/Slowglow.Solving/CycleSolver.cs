using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// Finds the periodic state of worlds driven by a sine: shooting on the states at the zero crossing, four worlds at a time. A world with
/// a settled relative starts from it and learns only the difference; the others, and those that this does not lead to their goal, follow the
/// directions of their states through every cycle. One for each thread.
/// </summary>
public sealed class CycleSolver
{
    private readonly Equations equations;
    private readonly int stepsPerCycle;
    private readonly IReadOnlyList<SlotChange[]> parameters;
    private readonly CycleRun run;
    private double step;

    /// <param name="stepsPerCycle">Time steps in a period, at least 8.</param>
    /// <param name="parameters">What moves with each random parameter.</param>
    public CycleSolver(Equations equations, int stepsPerCycle, IReadOnlyList<SlotChange[]> parameters)
    {
        (this.equations, this.stepsPerCycle, this.parameters) = (equations, stepsPerCycle, parameters);
        run = new CycleRun(equations, stepsPerCycle, parameters);
    }

    /// <summary>
    /// Whether everything is tried to find a steady state, at the risk of finding another than the world would go to from where it was: for units switched on,
    /// not for a signal that leads from one level to the next.
    /// </summary>
    public bool Perseveres { get; init; }

    /// <summary>Solves all problems at <paramref name="frequency"/> hertz.</summary>
    public void Solve(IReadOnlyList<CycleProblem> problems, double frequency, CancellationToken cancel = default)
    {
        step = 1 / frequency / stepsPerCycle;
        run.Easing = Perseveres;
        List<CycleProblem> hard = [.. problems.Where(p => p.Relative is null)];
        FromRelatives([.. problems.Where(p => p.Relative is not null)], hard, cancel);
        double[][] origins = [.. hard.Select(p => p.States)];
        List<CycleProblem> patient = [];
        InGroups([.. hard.Select(p => new Shooting(p, equations))], Shooting.SearchCycles, patient, cancel);

        // The few that need patience share their lanes, instead of holding up three others each.
        InGroups([.. patient.Select(p => new Shooting(p, equations))], Shooting.MostCycles, [], cancel);
        if (Perseveres)
        {
            Continue(hard, origins, cancel);
        }

        Spread(problems, cancel);
    }

    /// <summary>A lane that has settled takes the next problem at once.</summary>
    private void FromRelatives(IReadOnlyList<CycleProblem> problems, List<CycleProblem> hard, CancellationToken cancel)
    {
        var lanes = new ChordSearch?[Lanes.Width];
        var next = 0;
        while (Refill(problems, lanes, ref next))
        {
            cancel.ThrowIfCancellationRequested();
            run.Go(withStates: false, withParameters: false);
            for (var lane = 0; lane < Lanes.Width; lane++)
            {
                if (lanes[lane] is not { } search)
                {
                    continue;
                }

                search.Judge(run.States, run.System.X, lane, (run.Working & (1u << lane)) != 0);
                if (search.Settled)
                {
                    Unload(search.Problem, search.States, lane);
                    (search.Problem.Settled, search.Problem.Cycles) = (true, search.Cycles);
                    lanes[lane] = null;
                }
                else if (search.Lost)
                {
                    hard.Add(search.Problem);
                    lanes[lane] = null;
                }
            }
        }
    }

    private bool Refill(IReadOnlyList<CycleProblem> problems, ChordSearch?[] lanes, ref int next)
    {
        var changed = false;
        for (var lane = 0; lane < Lanes.Width; lane++)
        {
            if (lanes[lane] is null && next < problems.Count)
            {
                lanes[lane] = new ChordSearch(problems[next], equations);
                run.Load(lane, problems[next++]);
                changed = true;
            }
        }

        if (lanes.FirstOrDefault(l => l is not null) is not { } busy)
        {
            return false;
        }

        for (var lane = 0; lane < Lanes.Width; lane++)
        {
            if (lanes[lane] is not null)
            {
                run.Begin(lane, lanes[lane]!.States, lanes[lane]!.Start);
            }
            else if (changed || next >= problems.Count)
            {
                // An empty lane runs along with a busy one.
                run.Load(lane, busy.Problem);
                run.Begin(lane, busy.States, busy.Start);
                changed = true;
            }
        }

        if (changed)
        {
            run.Prepare(step);
        }

        return true;
    }

    /// <summary>What Newton has lost begins once more where it began.</summary>
    private void Continue(List<CycleProblem> hard, double[][] origins, CancellationToken cancel)
    {
        var lost = hard.Zip(origins).Where(h => !h.First.Settled).ToList();
        lost.ForEach(h => h.First.States = h.Second);
        InGroups([.. lost.Select(h => new Continuation(h.First, equations))], Continuation.MostCycles, [], cancel);
    }

    private void InGroups(List<PeriodSearch> some, int most, List<CycleProblem> unfinished, CancellationToken cancel)
    {
        foreach (var four in some.Chunk(Lanes.Width))
        {
            SolveGroup(four, most, unfinished, cancel);
        }
    }

    private void SolveGroup(PeriodSearch[] four, int most, List<CycleProblem> unfinished, CancellationToken cancel)
    {
        var shots = new PeriodSearch[Lanes.Width];
        run.Alone = four.Length == 1;
        for (var lane = 0; lane < Lanes.Width; lane++)
        {
            shots[lane] = four[Math.Min(lane, four.Length - 1)];
            run.Load(lane, shots[lane].Problem);
        }

        run.Prepare(step);
        for (var cycle = 0; cycle < most && four.Any(s => !s.Finished); cycle++)
        {
            cancel.ThrowIfCancellationRequested();
            Go(shots, withStates: four.Any(s => s is { Finished: false, Running: false }));
            for (var lane = 0; lane < four.Length; lane++)
            {
                four[lane].Judge(run.Columns, run.States, run.System.X, lane, (run.Working & (1u << lane)) != 0);
            }
        }

        unfinished.AddRange(four.Where(s => !s.Finished).Select(s => s.Problem));

        Go(shots, withStates: false);
        for (var lane = 0; lane < four.Length; lane++)
        {
            var (shot, problem) = (four[lane], four[lane].Problem);
            Unload(problem, shot.States, lane);
            problem.Settled = shot.Settled && (run.Working & (1u << lane)) != 0;
            problem.Cycles = shot.Cycles;
            problem.Restless = shot.Restless;
        }
    }

    private void Go(PeriodSearch[] shots, bool withStates)
    {
        for (var lane = 0; lane < Lanes.Width; lane++)
        {
            run.Begin(lane, shots[lane].States, shots[lane].Start);
        }

        run.Go(withStates, withParameters: false);
    }

    private void Unload(CycleProblem problem, double[] states, int lane)
    {
        var n = equations.Unknowns;
        problem.States = states;
        problem.End = Lanes.Column(run.System.X, lane);
        problem.Wave = new float[run.Wave.Length];
        problem.Mean = new double[n];
        for (var at = 0; at < run.Wave.Length; at += n)
        {
            for (var r = 0; r < n; r++)
            {
                var v = Lanes.Get(in run.Wave[at + r], lane);
                problem.Wave[at + r] = (float)v;
                problem.Mean[r] += v;
            }
        }

        for (var r = 0; r < n; r++)
        {
            problem.Mean[r] /= stepsPerCycle;
        }
    }

    private void Spread(IReadOnlyList<CycleProblem> problems, CancellationToken cancel)
    {
        foreach (var problem in problems.Where(p => p is { AsReference: true, Settled: true }))
        {
            problem.Reference = new ReferenceMaker(equations, stepsPerCycle, parameters).Make(problem, step);
        }

        List<CycleProblem> wanted = [.. problems.Where(p => p is { WithSpread: true, Settled: true, MeanSpread.Length: 0 })];
        var near = wanted.Where(p => NearbySpread.IsNear(equations, p)).ToHashSet();
        var nearby = new NearbySpread(equations, parameters);
        foreach (var four in near.GroupBy(p => p.Relative).SelectMany(g => g.Chunk(Lanes.Width)))
        {
            cancel.ThrowIfCancellationRequested();
            nearby.Fill(four);
        }

        foreach (var four in wanted.Where(p => p.MeanSpread.Length == 0).Chunk(Lanes.Width))
        {
            cancel.ThrowIfCancellationRequested();
            SpreadOf(four);
        }
    }

    private void SpreadOf(CycleProblem[] four)
    {
        run.Alone = four.Length == 1;
        for (var lane = 0; lane < Lanes.Width; lane++)
        {
            var problem = four[Math.Min(lane, four.Length - 1)];
            run.Load(lane, problem);
            run.Begin(lane, problem.States, problem.End);
        }

        run.Prepare(step);
        run.Go(withStates: true, withParameters: true);
        var spread = new CycleSpread(run.Columns, equations);
        for (var lane = 0; lane < four.Length; lane++)
        {
            var (mean, rms) = spread.Of(four[lane], lane, 0, parameters.Count);
            four[lane].MeanSpread = Array.ConvertAll(mean, v => (float)v);
            four[lane].RmsSpread = Array.ConvertAll(rms, v => (float)v);
        }
    }
}
