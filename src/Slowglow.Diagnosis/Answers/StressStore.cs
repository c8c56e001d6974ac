using System.Collections.Concurrent;
using Slowglow.Circuits;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Answers;

/// <summary>What every part stands in the world of a hypothesis at full mains, asked for once and kept.</summary>
internal sealed class StressStore(IWorldSource source, HypothesisList hypotheses)
{
    private readonly ConcurrentDictionary<int, IReadOnlyDictionary<string, PartStress>> known = [];

    /// <summary>Works out all of them on all cores.</summary>
    public void Ensure(IEnumerable<int> wanted, CancellationToken cancel) =>
        Parallel.ForEach(wanted, new ParallelOptions { CancellationToken = cancel }, h => Of(h));

    public IReadOnlyDictionary<string, PartStress> Of(int hypothesis) =>
        known.GetOrAdd(
            hypothesis,
            h =>
                source.Stress(Setup.Default, hypotheses.FaultsOf(h)).GroupBy(s => s.Part).ToDictionary(g => g.Key, g => g.First())
        );
}
