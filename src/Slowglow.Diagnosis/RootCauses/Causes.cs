using Slowglow.Circuits;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Suspects;

namespace Slowglow.Diagnosis.RootCauses;

/// <summary>
/// Faults elsewhere that would have put a suspect past its rating: every single fault's world is looked at, also those that the readings
/// speak against, since two parts are wrong by now.
/// </summary>
internal sealed class Causes(Knowledge knowledge)
{
    private const int Most = 4;

    public IEnumerable<Concern> Of(Cure cure, IReadOnlySet<string> good, CancellationToken cancel)
    {
        var singles = knowledge.Source.Faults.Count;
        int[] others =
        [
            .. Enumerable
                .Range(1, singles)
                .Where(h => knowledge.Hypotheses[h].Part != cure.Part && !good.Contains(knowledge.Hypotheses[h].Part)),
        ];
        knowledge.Stresses.Ensure([0, .. others], cancel);
        var before = knowledge.Stresses.Of(0).GetValueOrDefault(cure.Part);
        return others
            .Select(h => (Hypothesis: h, Excess: Excess(h, cure.Part, before)))
            .Where(c => c.Excess is not null)
            .GroupBy(c => knowledge.Hypotheses[c.Hypothesis].Part)
            .OrderByDescending(g => g.Sum(c => PriorOf(c.Hypothesis)))
            .Take(Most)
            .Select(g => Likeliest([.. g]))
            .Select(c => new Concern(FaultOf(c.Hypothesis).Part, cure.Part, FaultOf(c.Hypothesis), c.Excess!, true));
    }

    private Overstress? Excess(int h, string part, PartStress? before) =>
        knowledge.Stresses.Of(h).TryGetValue(part, out var stress) ? Overstress.Of(stress, before) : null;

    private Fault FaultOf(int h) => knowledge.Hypotheses[h].Faults[0];

    /// <summary>With what went over to the stories in which it blew a fuse.</summary>
    private double PriorOf(int h) =>
        knowledge.Hypotheses[h].Prior / Math.Max(1e-9, 1 - knowledge.Blown.Where(b => b.Cause == h - 1).Sum(b => b.Chance));

    /// <summary>The way of failing with the largest share, at the mildest severity that does the harm.</summary>
    private (int Hypothesis, Overstress? Excess) Likeliest((int Hypothesis, Overstress? Excess)[] ofPart) =>
        ofPart
            .GroupBy(c => (FaultOf(c.Hypothesis).Mode, FaultOf(c.Hypothesis).Where))
            .MaxBy(g => g.Sum(c => PriorOf(c.Hypothesis)))!
            .MinBy(c => c.Excess!.Ratio);
}
