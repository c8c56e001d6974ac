using Slowglow.Circuits;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Answers;

/// <summary>What every part stands in the world of a hypothesis at full mains, asked for once and kept.</summary>
internal sealed class StressStore(IWorldSource source, HypothesisList hypotheses)
{
    private readonly Dictionary<int, IReadOnlyDictionary<string, PartStress>> known = [];

    public IReadOnlyDictionary<string, PartStress> Of(int hypothesis)
    {
        if (!known.TryGetValue(hypothesis, out var stresses))
        {
            stresses = source
                .Stress(Setup.Default, hypotheses.FaultsOf(hypothesis))
                .GroupBy(s => s.Part)
                .ToDictionary(g => g.Key, g => g.First());
            known.Add(hypothesis, stresses);
        }
        return stresses;
    }
}
