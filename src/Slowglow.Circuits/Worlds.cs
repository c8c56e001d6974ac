using Slowglow.Circuits.Building;
using Slowglow.Circuits.Solved;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Circuits;

/// <summary>
/// Solves worlds of one circuit and answers probes. Solved worlds are kept, so that asking again costs nothing. Thread-safe.
/// A fault set is a list of simultaneous faults; the empty list is the healthy world.
/// </summary>
public sealed class Worlds
{
    private readonly WorldStore store;
    private readonly SignalFollower follower;
    private readonly Answers answers;
    private readonly CleanLimits limits;
    private readonly Lazy<PartSlots> parts;

    public Worlds(Circuit circuit)
    {
        Circuit = circuit;
        store = new WorldStore(circuit);
        follower = new SignalFollower(circuit, store.Solver);
        answers = new Answers(circuit);
        limits = new CleanLimits(follower);
        parts = new Lazy<PartSlots>(() => new PartSlots(circuit));
    }

    public Circuit Circuit { get; }

    /// <summary>One world, solved now or before, to be asked more than a meter can.</summary>
    public World World(Setup setup, IReadOnlyList<Fault> faults, CancellationToken cancel = default)
    {
        var state = store.Get(setup, [faults], null, cancel)[0];
        return new World(new AskedWorld(Circuit, state, store.Solver, follower, limits, parts.Value));
    }

    /// <summary>
    /// Answers every probe in every world: result [set][probe]. All probes are taken in the one setup. Spreads included.
    /// </summary>
    public IReadOnlyList<Answer[]> Ask(
        Setup setup,
        IReadOnlyList<IReadOnlyList<Fault>> faultSets,
        IReadOnlyList<Probe> probes,
        MeterClass meter,
        IProgress<double>? progress = null,
        CancellationToken cancel = default
    )
    {
        var worlds = store.Get(setup, faultSets, progress, cancel);
        var result = new Answer[worlds.Count][];
        var cold = setup.PowerOff ? Cold(worlds, probes, cancel) : null;
        Parallel.For(
            0,
            worlds.Count,
            new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Environment.ProcessorCount },
            w =>
            {
                var heard = new SmallSignals(worlds[w], follower);
                Answer Of(Probe p, int k) =>
                    cold is not null && IsCold(p) ? cold[w][k] : answers.Of(worlds[w], setup.Channel, p, meter, heard);
                result[w] = [.. probes.Select(Of)];
            }
        );
        return result;
    }

    private static bool IsCold(Probe probe) => probe.Kind is ProbeKind.Ohm or ProbeKind.Diode;

    /// <summary>Ohms and diode tests of all worlds, in portions on all cores.</summary>
    private Answer[][] Cold(IReadOnlyList<WorldState> worlds, IReadOnlyList<Probe> probes, CancellationToken cancel)
    {
        const int Portion = 8;
        int[] asked = [.. Enumerable.Range(0, probes.Count).Where(k => IsCold(probes[k]))];
        Probe[] cold = [.. asked.Select(k => probes[k])];
        var result = worlds.Select(_ => new Answer[probes.Count]).ToArray();
        Parallel.ForEach(
            Enumerable.Range(0, worlds.Count).Chunk(Portion),
            new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Environment.ProcessorCount },
            portion =>
            {
                var some = new ColdMeter(Circuit).Of([.. portion.Select(w => worlds[w])], cold, cancel);
                for (var k = 0; k < portion.Length; k++)
                {
                    for (var p = 0; p < asked.Length; p++)
                    {
                        result[portion[k]][asked[p]] = some[k][p];
                    }
                }
            }
        );
        return result;
    }

    /// <summary>
    /// How every world handles a 1 kHz signal on a channel (null = the setup's, else the first): level and how early it clips.
    /// Result [set]. Without a signal path nothing settles.
    /// </summary>
    public IReadOnlyList<SignalReport> Signal(
        Setup setup,
        IReadOnlyList<IReadOnlyList<Fault>> faultSets,
        string? channel = null,
        IProgress<double>? progress = null,
        CancellationToken cancel = default
    )
    {
        var worlds = store.Get(setup, faultSets, progress, cancel);
        if (Circuit.Fixtures.PathOf(channel ?? setup.Channel) is not { } path || setup.PowerOff)
        {
            return [.. worlds.Select(_ => Silent)];
        }

        var (drive, relative) = DriveFor(setup, path, cancel);
        var result = new SignalReport[worlds.Count];
        Parallel.ForEach(
            Enumerable.Range(0, worlds.Count).Chunk(16),
            new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Environment.ProcessorCount },
            portion => Report(worlds, portion, path, drive, relative, result, cancel)
        );
        return result;
    }

    private static SignalReport Silent => new(false, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN);

    /// <summary>Half the generator level that brings the healthy circuit to its clean limit, and the healthy circuit there.</summary>
    private (double Volts, DrivenReference? Relative) DriveFor(Setup setup, Fixtures.PathFixture path, CancellationToken cancel)
    {
        var healthy = store.Get(
            setup,
            [
                [],
            ],
            null,
            cancel
        )[0];
        var limit = limits.Of(healthy, path, cancel).GeneratorVolts;
        var volts = double.IsFinite(limit) ? limit / 2 : path.Path.LevelVolts;
        return (volts, healthy.Settled ? follower.Reference(healthy, volts, path, cancel) : null);
    }

    private void Report(
        IReadOnlyList<WorldState> worlds,
        int[] portion,
        Fixtures.PathFixture path,
        double drive,
        DrivenReference? relative,
        SignalReport[] result,
        CancellationToken cancel
    )
    {
        int[] settled = [.. portion.Where(w => worlds[w].Settled)];
        foreach (var w in portion)
        {
            result[w] = Silent;
        }

        if (settled.Length == 0)
        {
            return;
        }

        var large = follower.Large([.. settled.Select(w => (worlds[w], drive))], path, cancel, relative);
        for (var k = 0; k < settled.Length; k++)
        {
            var world = worlds[settled[k]];
            var small = follower.Small(world, path, SignalFollower.Hertz, out _);
            var level = small is null || path.Out < 0 ? 0 : path.Path.LevelVolts * small[path.Out].Magnitude;
            result[settled[k]] = new SignalReport(
                true,
                level,
                large[k].Distortion,
                large[k].Volts,
                world.RmsBetween(path.Out, -1),
                world.MeanAt(path.Out)
            );
        }
    }

    /// <summary>Largest output (volts rms at 1 kHz) below 5 % distortion, and the generator level that gives it.</summary>
    public CleanLimit CleanLimit(Setup setup, IReadOnlyList<Fault> faults, string? channel = null)
    {
        var world = store.Get(setup, [faults], null, CancellationToken.None)[0];
        return Circuit.Fixtures.PathOf(channel ?? setup.Channel) is { } path && world.Settled && !setup.PowerOff
            ? limits.Of(world, path, CancellationToken.None)
            : new CleanLimit(double.NaN, double.NaN, double.NaN);
    }

    /// <summary>What every part stands in a world, against its ratings; empty when the world does not settle.</summary>
    public IReadOnlyList<PartStress> Stress(Setup setup, IReadOnlyList<Fault> faults)
    {
        var world = store.Get(setup, [faults], null, CancellationToken.None)[0];
        if (!world.Settled)
        {
            return [];
        }

        var view = new StressView(Circuit, world);
        return [.. Circuit.Models.Select(m => m.Stress(view)).OfType<PartStress>()];
    }
}
