using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Next;

/// <summary>
/// What the next weighing will ask for, whatever the reading turns out to be: worked out while the reading is being taken, in portions small enough that
/// whoever comes with it hardly waits.
/// </summary>
/// <param name="Left">Stories that the readings have left.</param>
/// <param name="Plausible">Those among which the reading after the next will be chosen.</param>
/// <param name="Setups">On offer.</param>
internal sealed record Foresight(IReadOnlyList<int> Left, IReadOnlyList<int> Plausible, IReadOnlyList<Setup> Setups)
{
    private const int MostProposed = 2;
    private const int Portion = 32;

    /// <summary>Step by step, the most urgent first.</summary>
    /// <param name="proposed">Setups of the readings proposed, the best first; stories are weighed in the first of them.</param>
    public IEnumerable<Action<Knowledge, CancellationToken>> Steps(IEnumerable<Setup> proposed)
    {
        foreach (var setup in proposed.DistinctBy(SetupKey.Of).Take(MostProposed))
        {
            foreach (var some in Left.Chunk(Portion))
            {
                yield return (knowledge, cancel) => knowledge.BlockOf(setup).Ensure(some.Append(0), null, cancel);
            }
        }
        foreach (var setup in Setups)
        {
            foreach (var some in Plausible.Chunk(Portion))
            {
                yield return (knowledge, cancel) => knowledge.BlockOf(setup).Ensure(some.Append(0), null, cancel);
            }
        }

        // The leading suspect is asked what may have killed it, which any single fault can.
        yield return (knowledge, cancel) =>
            knowledge.Stresses.Ensure(Enumerable.Range(0, knowledge.Source.Faults.Count + 1), cancel);
    }
}
