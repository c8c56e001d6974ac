using Slowglow.Diagnosis.Hypotheses;

namespace Slowglow.Diagnosis.Suspects;

/// <summary>Says why it takes two faults: what each alone leaves open, and whether one brought the other about.</summary>
internal sealed class PairWords(Knowledge knowledge, Posterior posterior, string firstSetup)
{
    public IEnumerable<string> Of(int hypothesis)
    {
        if (knowledge.Hypotheses[hypothesis].Members is not var (first, second))
        {
            yield break;
        }
        yield return $"Two faults at once: {Alone(first)}, and {Alone(second)}.";
        foreach (var (cause, victim) in new[] { (first, second), (second, first) })
        {
            if (knowledge.Cascades.Overload(cause, victim) is { } overload)
            {
                var (a, b) = (knowledge.Hypotheses[cause], knowledge.Hypotheses[victim]);
                yield return $"{a.Faults[0]} puts {b.Part} at {overload.Words}, so the one may well have brought the other.";
            }
        }
    }

    private string Alone(int single)
    {
        var left = new List<string>();
        for (var i = 0; i < posterior.Readings.Count; i++)
        {
            var column = posterior.Readings.Column(i);
            if (
                column.Block.Has(single)
                && Explainer.Distance(
                    posterior.Readings[i],
                    column.Block.Alone(single, column.Index),
                    column.Block.Alone(0, column.Index)
                ) > Explainer.Beyond
            )
            {
                left.Add(ReadingWords.Place(posterior.Readings[i], firstSetup));
            }
        }
        var fault = knowledge.Hypotheses[single].Faults[0];
        return left.Count == 0
            ? $"{fault} alone comes near every reading"
            : $"{fault} alone does not explain {Explainer.Listed(left)}";
    }
}
