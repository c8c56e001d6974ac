using System.Collections.Concurrent;
using Slowglow.Sheets.Setups;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>Worlds solved so far; solves what is missing on all cores. Thread-safe.</summary>
internal sealed class WorldStore(Circuit circuit)
{
    /// <summary>Most worlds of a batch. Fewer worlds than cores could take at once are shared out evenly, in whole lanes.</summary>
    private const int PerBatch = 48;
    private readonly ConcurrentDictionary<string, WorldState> worlds = new();

    public WorldSolver Solver { get; } = new(circuit);

    public IReadOnlyList<WorldState> Get(
        Setup setup,
        IReadOnlyList<IReadOnlyList<Fault>> sets,
        IProgress<double>? progress,
        CancellationToken cancel
    )
    {
        var setupKey = WorldKey.Of(setup, circuit.Sheet.Mains.Volts);
        string[] keys = [.. sets.Select(s => $"{setupKey}#{WorldKey.Of(s)}")];
        var missing = Enumerable.Range(0, sets.Count).Where(k => !worlds.ContainsKey(keys[k])).DistinctBy(k => keys[k]).ToList();
        if (missing.Count > 0)
        {
            Solve(setup, setupKey, [.. missing.Select(k => (keys[k], sets[k]))], progress, cancel);
        }

        return [.. keys.Select(k => worlds[k])];
    }

    private void Solve(
        Setup setup,
        string setupKey,
        List<(string Key, IReadOnlyList<Fault> Faults)> missing,
        IProgress<double>? progress,
        CancellationToken cancel
    )
    {
        var healthy = Solver.Healthy(setup, setupKey);

        // A world at rest has no cycle to start from its relative's.
        var relative = setup.PowerOff || !circuit.Fixtures.HasMains ? null : healthy;
        var done = 0;
        var options = new ParallelOptions { CancellationToken = cancel, MaxDegreeOfParallelism = Environment.ProcessorCount };
        Parallel.ForEach(
            missing.Chunk(Portion(missing.Count)),
            options,
            batch =>
            {
                var fresh = batch.Select(b => b.Faults.Count == 0 ? healthy : Solver.New(setup, b.Faults)).ToArray();
                var unsolved = fresh.Where(w => !ReferenceEquals(w, healthy)).ToArray();
                if (unsolved.Length > 0)
                {
                    Solver.Batch(unsolved, relative, cancel);
                }

                foreach (var (entry, world) in batch.Zip(fresh))
                {
                    worlds[entry.Key] = world;
                }

                progress?.Report((double)Interlocked.Add(ref done, batch.Length) / missing.Count);
            }
        );
    }

    private static int Portion(int count)
    {
        var each = (count + Environment.ProcessorCount - 1) / Environment.ProcessorCount;
        return Math.Min(PerBatch, (each + Lanes.Width - 1) / Lanes.Width * Lanes.Width);
    }
}
