using Slowglow.Sheets.Setups;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>Solves worlds of a circuit in batches: at rest with the power off, to the periodic state of the mains with it on.</summary>
internal sealed class WorldSolver(Circuit circuit)
{
    /// <summary>Steps of a mains cycle.</summary>
    public const int MainsSteps = 120;
    private const int LampRounds = 6;

    private readonly SlowDrift drift = new(circuit);
    private readonly Following following = new(circuit);
    private readonly Lock healthyLock = new();
    private readonly Dictionary<string, WorldState> healthy = [];

    /// <summary>The healthy world of a setup, solved once.</summary>
    public WorldState Healthy(Setup setup, string key)
    {
        lock (healthyLock)
        {
            if (!healthy.TryGetValue(key, out var world))
            {
                world = New(setup, []);
                Batch([world], null, CancellationToken.None);
                healthy[key] = world;
            }

            return world;
        }
    }

    public WorldState New(Setup setup, IReadOnlyList<Fault> faults) =>
        new()
        {
            Setup = setup,
            Faults = faults,
            Slots = circuit.SlotsOf(setup, faults),
        };

    /// <summary>Solves worlds of one setup; <paramref name="relative"/> is its healthy world, to start from.</summary>
    public void Batch(IReadOnlyList<WorldState> worlds, WorldState? relative, CancellationToken cancel)
    {
        if (worlds[0].Setup.PowerOff || !circuit.Fixtures.HasMains)
        {
            SolveAtRest(worlds, cancel);
            following.Settle(worlds, some => SolveAtRest(some, cancel));
        }
        else
        {
            SolveCycle(worlds, relative, cancel);
            following.Settle(worlds, some => Cycle(some, relative, true, cancel));
        }

        Again([.. worlds.Where(w => !w.Settled)], relative, cancel);
        Resist(worlds);
        WorldState[] unfinished = [.. worlds.Where(w => w is { Settled: true, Left.Length: > 0 } && drift.IsFar(w))];
        if (unfinished.Length > 0)
        {
            Cycle(unfinished, null, true, cancel);
            Again([.. unfinished.Where(w => !w.Settled)], relative, cancel);
            Resist(unfinished);
        }
    }

    /// <summary>Once more from the crest of the mains: a guess may have led to where there is no way on.</summary>
    private void Again(IReadOnlyList<WorldState> worlds, WorldState? relative, CancellationToken cancel)
    {
        if (worlds.Count == 0 || relative is null || worlds[0].Setup.LimiterWatts is not null)
        {
            return;
        }

        foreach (var world in worlds)
        {
            (world.States, world.End) = ([], []);
        }

        Crests(worlds, relative, cancel);
        Cycle(worlds, relative, true, cancel, fromRelative: false);
    }

    private void Resist(IReadOnlyList<WorldState> worlds)
    {
        var resistance = new TransferResistance(circuit.Equations);
        foreach (var four in worlds.Where(w => w.Settled).Chunk(Lanes.Width))
        {
            var results = resistance.Of([.. four.Select(w => (w.Slots, w.Wave))]);
            for (var k = 0; k < four.Length; k++)
            {
                four[k].Resistance = results[k];
            }
        }
    }

    private void SolveAtRest(IReadOnlyList<WorldState> worlds, CancellationToken cancel)
    {
        var problems = worlds
            .Select(w => new StaticProblem { Slots = w.Slots, Start = new double[circuit.Equations.Unknowns] })
            .ToList();
        new StaticSolver(circuit.Equations).Solve(problems, 0, cancel);
        foreach (var (world, problem) in worlds.Zip(problems))
        {
            world.Settled = problem.Settled;
            world.Mean = problem.Solution;
            world.Wave = [.. problem.Solution.Select(v => (float)v)];
        }
    }

    private void SolveCycle(IReadOnlyList<WorldState> worlds, WorldState? relative, CancellationToken cancel)
    {
        if (worlds[0].Setup.LimiterWatts is not null)
        {
            SolveWithLimiter(worlds, relative, cancel);
            return;
        }

        Guess(worlds, relative, cancel);
        Cycle(worlds, relative, true, cancel);
    }

    /// <summary>First guesses: on the healthy supply's load line, or at the crest of the mains where the fault lies within the supply.</summary>
    private void Guess(IReadOnlyList<WorldState> worlds, WorldState? relative, CancellationToken cancel)
    {
        var within = worlds.Where(w => relative?.Supply is not { } supply || supply.IsWithin(w.Faults)).ToHashSet();
        Crests([.. within], relative, cancel);
        if (relative?.Supply is not { } line)
        {
            return;
        }

        var beyond = worlds.Where(w => !within.Contains(w)).ToList();
        var problems = beyond
            .Select(w => new StaticProblem
            {
                Slots = line.On(w.Slots),
                Start = line.Rest,
                Relative = line.Reference,
            })
            .ToList();
        new StaticSolver(circuit.Equations).Solve(problems, 0, cancel);
        var usual = StatesOf(line.Rest, line.On(relative.Slots));
        foreach (var (world, problem) in beyond.Zip(problems))
        {
            if (!problem.Settled)
            {
                Crests([world], relative, cancel);
                continue;
            }

            // What the cycle does to the healthy unit at rest on its line, it does to this one, more or less.
            var states = StatesOf(problem.Solution, problem.Slots);
            world.States = [.. states.Select((s, m) => s + relative.States[m] - usual[m])];
            world.End = [.. problem.Solution.Select((x, r) => x + relative.End[r] - line.Rest[r])];
        }
    }

    /// <summary>The lamp's resistance and the current through it are found by turns.</summary>
    private void SolveWithLimiter(IReadOnlyList<WorldState> worlds, WorldState? relative, CancellationToken cancel)
    {
        var rated = circuit.Sheet.Mains.Volts;
        var ohms = worlds.Select(w => LimiterLamp.Ohms(w.Setup.LimiterWatts!.Value, rated, 0.3 * rated)).ToArray();
        for (var round = 0; round < LampRounds; round++)
        {
            for (var k = 0; k < worlds.Count; k++)
            {
                circuit.Fixtures.SetLimiter(ohms[k], worlds[k].Slots);
            }

            if (round == 0)
            {
                Guess(worlds, relative, cancel);
            }

            var last = round == LampRounds - 1;
            Cycle(worlds, relative, last, cancel);
            for (var k = 0; k < worlds.Count && !last; k++)
            {
                var across = InletAmps(worlds[k]) * ohms[k];
                if (!double.IsFinite(across))
                {
                    // This round did not settle: start the next from the crest, with the lamp as it is.
                    (worlds[k].States, worlds[k].End) = ([], []);
                    Crests([worlds[k]], relative, cancel);
                    continue;
                }

                var next = LimiterLamp.Ohms(worlds[k].Setup.LimiterWatts!.Value, rated, across);
                ohms[k] = Math.Sqrt(ohms[k] * next);
            }
        }
    }

    /// <summary>A first guess: everything at rest with the mains held at its crest.</summary>
    private void Crests(IReadOnlyList<WorldState> worlds, WorldState? relative, CancellationToken cancel)
    {
        var problems = worlds
            .Select(w => new StaticProblem
            {
                Slots = AtCrest(w.Slots),
                Start = relative?.Crest ?? new double[circuit.Equations.Unknowns],
            })
            .ToList();
        new StaticSolver(circuit.Equations).Solve(problems, 1, cancel);
        foreach (var (world, problem) in worlds.Zip(problems))
        {
            world.Crest = problem.Solution.All(double.IsFinite) ? problem.Solution : problem.Start;
        }
    }

    private double[] AtCrest(double[] slots)
    {
        var crest = (double[])slots.Clone();
        foreach (var slot in circuit.OpenAtCrest)
        {
            crest[slot] = 1e9;
        }

        return crest;
    }

    private void Cycle(
        IReadOnlyList<WorldState> worlds,
        WorldState? relative,
        bool withSpread,
        CancellationToken cancel,
        bool fromRelative = true
    )
    {
        var problems = worlds.Select(w => Problem(w, relative, withSpread, fromRelative)).ToList();
        var solver = new CycleSolver(circuit.Equations, MainsSteps, circuit.Changes);
        solver.Solve(problems, circuit.Sheet.Mains.Frequency, cancel);
        foreach (var (world, problem) in worlds.Zip(problems))
        {
            world.Settled = problem.Settled;
            world.Cycles = problem.Cycles;
            world.Left = problem.Left;
            world.Mean = problem.Mean;
            world.Wave = problem.Wave;
            world.States = problem.States;
            world.End = problem.End;
            world.MeanSpread = problem.MeanSpread;
            world.RmsSpread = problem.RmsSpread;
            world.Reference = problem.Reference;
            world.Supply = problem.Reference is null ? null : SupplyLine.Of(circuit, world);
        }
    }

    private CycleProblem Problem(WorldState world, WorldState? relative, bool withSpread, bool fromRelative)
    {
        var states = world.States.Length > 0 ? world.States : StatesOf(world.Crest, world.Slots);
        var start = world.End.Length > 0 ? world.End : world.Crest;
        if (relative is { Settled: true } && world.States.Length == 0)
        {
            // What the cycle does to the healthy crest guess, it does to this one, more or less.
            var usual = StatesOf(relative.Crest, relative.Slots);
            states = [.. states.Select((s, m) => s + (relative.States[m] - usual[m]))];
            start = [.. start.Select((x, r) => x + (relative.End[r] - relative.Crest[r]))];
        }

        return new CycleProblem
        {
            Slots = world.Slots,
            Start = start,
            States = states,
            WithSpread = withSpread,
            Relative = fromRelative ? relative?.Reference : null,
            AsReference = world.Faults.Count == 0 && withSpread,
        };
    }

    /// <summary>States that belong to unknowns at rest.</summary>
    public double[] StatesOf(double[] x, double[] slots) =>
        [
            .. circuit.Equations.StorageBranches.Select(b =>
            {
                var branch = circuit.Equations.Branches[b];
                double u = 0;
                for (var k = 0; k < branch.Rows.Length; k++)
                {
                    u += branch.Weights[k] * x[branch.Rows[k]];
                }

                // The flux of a mains transformer carries no steady current at the zero crossing worth guessing.
                return branch.Kind == BranchKind.Storage ? u
                    : circuit.OpenAtCrest.Contains(branch.Slot) ? 0
                    : u / slots[branch.Slot];
            }),
        ];

    /// <summary>Rms current drawn from the outlet, amperes.</summary>
    public double InletAmps(WorldState world)
    {
        var fixtures = circuit.Fixtures;
        var crest = fixtures.MainsSwing(world.Slots);
        var siemens = fixtures.MainsSiemens(world.Slots);
        double sum = 0;
        for (var k = 0; k < world.Steps; k++)
        {
            var source = crest * Math.Sin(2 * Math.PI * (k + 1) / world.Steps);
            var amps = siemens * (source - world.At(k, fixtures.LiveRow) + world.At(k, fixtures.NeutralRow));
            sum += amps * amps;
        }

        return world.Steps == 0 ? 0 : Math.Sqrt(sum / world.Steps);
    }
}
