using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Suspects;

/// <summary>Says which reading ruled out which parts: those of which every fault is far from what was read.</summary>
internal sealed class RuledOut(Knowledge knowledge, Posterior posterior, string firstSetup)
{
    /// <summary>A part below this is out.</summary>
    private const double Out = 2e-3;

    /// <summary>Parts named for a reading; the rest is counted.</summary>
    private const int Named = 6;

    /// <summary>Sentences, the reading that ruled out most first.</summary>
    public IReadOnlyList<string> Say()
    {
        var list = knowledge.Hypotheses;
        if (posterior.Readings.Count == 0)
        {
            return [];
        }
        var parts = Enumerable.Range(1, list.WithoutPairs - 1).GroupBy(h => list[h].Part).ToList();
        return
        [
            .. parts
                .Where(p => p.Sum(h => posterior.Of[h]) < Out)
                .Select(p => (Part: p.Key, Weight: p.Sum(h => list[h].Prior), Reading: By([.. p])))
                .Where(p => p.Reading >= 0)
                .GroupBy(p => p.Reading)
                .OrderByDescending(g => g.Count())
                .Select(g => Sentence(g.Key, [.. g.OrderByDescending(p => p.Weight).Select(p => p.Part)], parts.Count)),
        ];
    }

    private string Sentence(int reading, string[] parts, int all)
    {
        var r = posterior.Readings[reading];
        var what = $"{ReadingWords.Place(r, firstSetup)} = {ReadingWords.Value(r)}";
        var rest = parts.Length - Named;
        var names = string.Join(", ", parts.Take(Named)) + (rest > 0 ? $" and {rest} more" : "");
        return $"{what} rules out {names} ({parts.Length} of {all} parts).";
    }

    /// <summary>The reading that speaks against most of a part's faults by weight, where every one of them is spoken against; else -1.</summary>
    private int By(int[] faults)
    {
        var against = new double[posterior.Readings.Count];
        foreach (var h in faults)
        {
            var worst = Worst(h);
            if (worst < 0)
            {
                return -1;
            }
            against[worst] += knowledge.Hypotheses[h].Prior;
        }
        return Array.IndexOf(against, against.Max());
    }

    private int Worst(int h)
    {
        var (worst, far) = (-1, Explainer.Beyond);
        for (var i = 0; i < posterior.Readings.Count; i++)
        {
            var column = posterior.Readings.Column(i);
            if (!column.Block.Has(h))
            {
                continue;
            }
            var z = Explainer.Distance(
                posterior.Readings[i],
                column.Block.Alone(h, column.Index),
                column.Block.Alone(0, column.Index)
            );
            if (z > far)
            {
                (worst, far) = (i, z);
            }
        }
        return worst;
    }
}
