using System.Collections.Concurrent;
using Slowglow.Sheets.Setups;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>Solves worlds of a circuit in batches: at rest with the power off, to the periodic state of the mains with it on.</summary>
internal sealed class WorldSolver(Circuit circuit)
{
    /// <summary>Steps of a mains cycle.</summary>
    public const int MainsSteps = 120;
    private const int LampRounds = 12;

    private readonly SlowDrift drift = new(circuit);
    private readonly Following following = new(circuit);
    private readonly ConcurrentDictionary<string, Lazy<WorldState>> healthy = new();

    /// <summary>The healthy world of a setup, solved once. Those of different setups are solved side by side.</summary>
    public WorldState Healthy(Setup setup, string key) => healthy.GetOrAdd(key, _ => new(() => Healthy(setup))).Value;

    private WorldState Healthy(Setup setup)
    {
        var world = New(setup, []);
        Batch([world], null, CancellationToken.None);
        return world;
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
        else if (worlds[0].Setup.LimiterWatts is not null)
        {
            SolveWithLimiter(worlds, relative, cancel);
        }
        else
        {
            Guess(worlds, relative, cancel);
            Cycle(worlds, relative, true, cancel);
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

    /// <summary>
    /// Once more from the crest of its own mains: a guess may have led to where there is no way on, and what the cycle does to the healthy unit gives a
    /// supply that nothing feeds volts that nothing takes away.
    /// </summary>
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
        Cycle(worlds, null, true, cancel);
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

    /// <summary>
    /// The lamp's resistance and the current through it are found by turns. What follows the cycle (a heater behind the lamp is
    /// colder, and draws the lamp darker) moves before the last cycle, which alone is asked for spreads.
    /// </summary>
    private void SolveWithLimiter(IReadOnlyList<WorldState> worlds, WorldState? relative, CancellationToken cancel)
    {
        var all = Lamps(worlds, w => FirstLamp(w, relative));
        SetLamps(all);
        Guess(worlds, relative, cancel);
        SearchLamps(all, relative, cancel);
        following.Settle(
            worlds,
            moved => SearchLamps(Lamps(moved, w => circuit.Fixtures.LimiterOhms(w.Slots)), relative, cancel)
        );
        Cycle(worlds, relative, true, cancel);
    }

    /// <summary>Faults beyond the supply change the lamp little: theirs begins as the healthy unit's. NaN where nothing is known.</summary>
    private double FirstLamp(WorldState world, WorldState? relative) =>
        relative?.Supply is { } supply && !supply.IsWithin(world.Faults)
            ? circuit.Fixtures.LimiterOhms(relative.Slots)
            : double.NaN;

    private (WorldState World, LampSearch Lamp)[] Lamps(IReadOnlyList<WorldState> worlds, Func<WorldState, double> start) =>
        [
            .. worlds.Select(w =>
                (w, new LampSearch(new TungstenLamp(w.Setup.LimiterWatts!.Value, circuit.Sheet.Mains.Volts), start(w)))
            ),
        ];

    private void SetLamps(IEnumerable<(WorldState World, LampSearch Lamp)> all)
    {
        foreach (var (world, lamp) in all)
        {
            circuit.Fixtures.SetLimiter(lamp.Ohms, world.Slots);
        }
    }

    /// <summary>A round that does not settle tells nothing: the next goes on from there, or from the crest, with the lamp as it is.</summary>
    private void SearchLamps((WorldState World, LampSearch Lamp)[] open, WorldState? relative, CancellationToken cancel)
    {
        for (var round = 0; round < LampRounds && open.Length > 0; round++)
        {
            SetLamps(open);
            Cycle([.. open.Select(o => o.World)], relative, false, cancel);
            foreach (var (world, lamp) in open)
            {
                var amps = InletAmps(world);
                if (world.Settled)
                {
                    lamp.Learn(amps);
                    continue;
                }

                lamp.Miss();
                if (!double.IsFinite(amps))
                {
                    (world.States, world.End) = ([], []);
                    Crests([world], relative, cancel);
                }
            }

            open = [.. open.Where(o => o.Lamp is { IsFound: false, IsGivenUp: false })];
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

    private void Cycle(IReadOnlyList<WorldState> worlds, WorldState? relative, bool withSpread, CancellationToken cancel)
    {
        if (worlds.Count == 0)
        {
            return;
        }

        var problems = worlds.Select(w => Problem(w, relative, withSpread)).ToList();
        var solver = new CycleSolver(circuit.Equations, MainsSteps, circuit.Changes) { Perseveres = true };
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
            HoldTurns(world);
            world.Reference = problem.Reference;
            world.Inlet = problem.Reference is { WatchedShare.Length: > 0 } own
                ? new(InletAmps(world), own.WatchedShare)
                : relative?.Inlet ?? world.Inlet;
            world.Supply = problem.Reference is null ? null : SupplyLine.Of(circuit, world);
        }
    }

    /// <summary>What turns more or less bring goes with the swing of the core, next to nothing where nothing feeds it.</summary>
    private void HoldTurns(WorldState world)
    {
        foreach (var (parameter, turns) in circuit.Turns)
        {
            var share = (float)turns.Share(world.Wave, world.Unknowns);
            for (var r = 0; r < world.Unknowns; r++)
            {
                Scale(world.MeanSpread, (parameter * world.Unknowns) + r, share);
                Scale(world.RmsSpread, (parameter * world.Unknowns) + r, share);
            }
        }
    }

    private static void Scale(float[] table, int at, float share)
    {
        if (at < table.Length)
        {
            table[at] *= share;
        }
    }

    private CycleProblem Problem(WorldState world, WorldState? relative, bool withSpread)
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
            Relative = relative?.Reference,
            AsReference = world.Faults.Count == 0 && withSpread,
            Watched = circuit.Fixtures.MainsBranch,
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
