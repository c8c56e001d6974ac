using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Suspects;

namespace Slowglow.Diagnosis.RootCauses;

/// <summary>
/// What to look at before a new part goes in: the parts that the leading suspects hurt, and the faults that would have hurt the suspects.
/// A part is named once, whatever it is named for.
/// </summary>
internal sealed class RootCauseSearch(Knowledge knowledge)
{
    private const double WorthAsking = 0.15;
    private const int MostSuspects = 2;
    private const int Shown = 8;

    public Checks Of(IReadOnlyList<Cure> cures, IReadOnlyList<ReadingVerdict> verdicts, CancellationToken cancel)
    {
        var good = ProvenGood.Of(verdicts, knowledge.Parts.Values);
        var (victims, causes) = (new Victims(knowledge), new Causes(knowledge));
        var concerns = new List<Concern>();
        foreach (var cure in cures.Take(MostSuspects).Where(c => c.Probability > WorthAsking))
        {
            cancel.ThrowIfCancellationRequested();
            concerns.AddRange(victims.Of(cure).Where(c => !good.Contains(c.Part)));
            concerns.AddRange(causes.Of(cure, good, cancel));
        }

        List<Concern[]> byPart = [.. concerns.GroupBy(c => c.Part).Take(Shown).Select(g => g.ToArray())];
        return new([.. byPart.Select(ConcernWords.Say)], ConcernWords.BeforePower(byPart));
    }
}
