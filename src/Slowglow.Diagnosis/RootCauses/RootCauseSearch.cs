using Slowglow.Circuits;
using Slowglow.Diagnosis.Answers;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Diagnosis.Suspects;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.RootCauses;

/// <summary>
/// Which parts the leading suspects would have hurt, and which other faults would have hurt the leading suspect: only stories whose DC
/// at the part differs much from a healthy unit's are looked at.
/// </summary>
internal sealed class RootCauseSearch(Knowledge knowledge)
{
    private const double WorthAsking = 0.15;
    private const int MostCauses = 16;
    private const int Shown = 4;

    public IReadOnlyList<RootCause> Of(IReadOnlyList<Cure> cures, CancellationToken cancel)
    {
        var found = new List<RootCause>();
        foreach (var cure in cures.Take(2).Where(c => c.Probability > WorthAsking))
        {
            cancel.ThrowIfCancellationRequested();
            found.AddRange(Victims(cure));
            found.AddRange(Causes(cure));
        }
        return [.. found.DistinctBy(r => (r.Part, r.Victim))];
    }

    private IEnumerable<RootCause> Victims(Cure cure)
    {
        var h = cure.Hypotheses.First(i => knowledge.Hypotheses[i].Part == cure.Part);
        var story = knowledge.Hypotheses[h];
        var before = knowledge.Stresses.Of(0);
        // The world that blew the fuse is the one in which it was still whole.
        return knowledge
            .Stresses.Of(knowledge.Hypotheses.BeforeTheFuse(h))
            .Values.Where(s => s.Part != cure.Part)
            .Select(s => (s.Part, Excess: Overstress.Of(s, before.GetValueOrDefault(s.Part))))
            .Where(v => v.Excess is not null)
            .OrderByDescending(v => v.Excess!.Ratio)
            .Take(Shown)
            .Select(v => new RootCause(
                v.Part,
                cure.Part,
                $"With {story.Faults[0]}, {v.Part} stands {v.Excess!.Words}: check it before the unit goes back to full mains."
            ));
    }

    private IEnumerable<RootCause> Causes(Cure cure)
    {
        if (!knowledge.Parts.TryGetValue(cure.Part, out var part))
        {
            yield break;
        }
        var before = knowledge.Stresses.Of(0).GetValueOrDefault(part.Designator);
        var shown = 0;
        foreach (var h in Shortlist(part))
        {
            var stress = knowledge.Stresses.Of(h).GetValueOrDefault(part.Designator);
            var excess = stress is null ? null : Overstress.Of(stress, before);
            if (excess is not null && shown++ < Shown)
            {
                var cause = knowledge.Hypotheses[h].Faults[0];
                yield return new(
                    cause.Part,
                    part.Designator,
                    $"{cause} would put {part.Designator} at {excess.Words}: check {cause.Part} before a new {part.Designator} goes in."
                );
            }
        }
    }

    /// <summary>Hard single faults of other parts that shift the DC at the part's pins, likeliest before any evidence first, one a part.</summary>
    private IEnumerable<int> Shortlist(Part part)
    {
        var block = knowledge.BlockOf(Setup.Default);
        int[] probes =
        [
            .. Enumerable
                .Range(0, block.Probes.Count)
                .Where(p => block.Probes[p].Kind == ProbeKind.Dc && part.Pins.Any(pin => pin.Net == block.Probes[p].Red)),
        ];
        return Enumerable
            .Range(1, knowledge.Hypotheses.Count - 1)
            .Where(h => IsHard(knowledge.Hypotheses[h]) && knowledge.Hypotheses[h].Part != part.Designator)
            .Where(h => block.Has(h) && block.Has(0) && probes.Any(p => Shifts(block, h, p)))
            .OrderByDescending(h => knowledge.Hypotheses[h].Prior)
            .DistinctBy(h => knowledge.Hypotheses[h].Part)
            .Take(MostCauses);
    }

    private static bool IsHard(Hypothesis story) =>
        story.Faults.Count == 1
        && story.Faults[0].Mode is FailureMode.Short or FailureMode.Open or FailureMode.StuckHigh or FailureMode.StuckLow;

    private static bool Shifts(AnswerBlock block, int h, int p)
    {
        var (mine, healthy) = (block.Alone(h, p), block.Alone(0, p));
        return mine.HasFigure && healthy.HasFigure && Math.Abs(mine.Mean - healthy.Mean) > 0.15 * Math.Abs(healthy.Mean) + 0.3;
    }
}
