using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Suspects;
using Slowglow.Sheets.Parts.Fuse;

namespace Slowglow.Diagnosis.RootCauses;

/// <summary>Parts that run past their ratings in a suspect's world. Fuses are left out: blowing is what they are for.</summary>
internal sealed class Victims(Knowledge knowledge)
{
    private const int Most = 4;

    public IEnumerable<Concern> Of(Cure cure)
    {
        var h = cure.Hypotheses.First(i => knowledge.Hypotheses[i].Part == cure.Part);
        var story = knowledge.Hypotheses[h];
        var before = knowledge.Stresses.Of(0);
        IEnumerable<string> replaced = cure.IsPair ? cure.Parts : [cure.Part];

        // The world that did the harm is the one in which the fuse was still whole.
        return knowledge
            .Stresses.Of(knowledge.Hypotheses.BeforeTheFuse(h))
            .Values.Where(s => !replaced.Contains(s.Part) && knowledge.Parts.GetValueOrDefault(s.Part) is not (null or FusePart))
            .Select(s => (s.Part, Excess: Overstress.Of(s, before.GetValueOrDefault(s.Part))))
            .Where(v => v.Excess is not null)
            .OrderByDescending(v => v.Excess!.Ratio)
            .Take(Most)
            .Select(v => new Concern(v.Part, cure.Part, story.Faults[0], v.Excess!, false));
    }
}
