using Slowglow.Circuits;
using Slowglow.Diagnosis.Answers;
using Slowglow.Diagnosis.Complaints;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Diagnosis.Looks;
using Slowglow.Quantities;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Suspects;

/// <summary>Says what of the evidence a story explains and what it explains badly, with figures from its world.</summary>
internal sealed class Explainer(Knowledge knowledge, Posterior posterior, string firstSetup)
{
    /// <summary>Standard deviations within which a reading is explained, and beyond which it is not.</summary>
    private const double Within = 2.2;
    internal const double Beyond = 3.5;

    public (IReadOnlyList<string> Explains, IReadOnlyList<string> Misfits) Of(int hypothesis)
    {
        var (explains, misfits, normal) = (new List<string>(), new List<string>(), new List<string>());
        AddFuse(hypothesis, explains);
        explains.AddRange(new PairWords(knowledge, posterior, firstSetup).Of(hypothesis));
        for (var i = 0; i < posterior.Readings.Count; i++)
        {
            AddReading(hypothesis, i, explains, misfits, normal);
        }
        foreach (var word in posterior.Heard)
        {
            AddWord(hypothesis, word, explains, misfits);
        }
        LookSentences.Add(posterior, hypothesis, explains, misfits);
        if (normal.Count > 0)
        {
            explains.Add($"It leaves {Listed(normal)} as measured, as in a healthy unit.");
        }
        return (explains, misfits);
    }

    private void AddReading(int h, int i, List<string> explains, List<string> misfits, List<string> normal)
    {
        var reading = posterior.Readings[i];
        var column = posterior.Readings.Column(i);
        var (own, healthy) = (column.Block.Alone(h, column.Index), column.Block.Alone(0, column.Index));
        if (own.Kind == AnswerKind.NotApplicable)
        {
            return;
        }
        var (z, zHealthy) = (Distance(reading, own, healthy), Distance(reading, healthy, healthy));
        var place = ReadingWords.Place(reading, firstSetup);
        var (said, would) = (ReadingWords.Value(reading), Would(h, column, reading, own));
        if (z > Beyond)
        {
            misfits.Add($"{place} would read {would}, but you read {said}.");
        }
        else if (z < Within && zHealthy > Beyond)
        {
            var good = ReadingWords.Value(reading.Probe, healthy);
            explains.Add($"{place} would read {would}; you read {said} (a healthy unit: {good}).");
        }
        else if (z < Within)
        {
            normal.Add(place);
        }
    }

    /// <summary>In standard deviations; zero or very far where one side has no figure.</summary>
    internal static double Distance(Reading reading, Prediction prediction, Prediction healthy)
    {
        var open = prediction.Kind is AnswerKind.Overload or AnswerKind.Floating;
        if (reading.Said != MeterSaid.Value)
        {
            var broad = new Broad(reading.Probe, healthy, 1);
            return prediction.Kind == AnswerKind.Unsettled
                ? 3
                : OfWord(Math.Exp(SaidOdds.Log(reading, prediction, healthy, broad)));
        }
        if (!prediction.HasFigure)
        {
            return open && reading.Probe.Kind is ProbeKind.Ohm or ProbeKind.Diode ? 20 : 3;
        }
        return Math.Abs(Scale.Of(reading.Probe).To(reading.Value) - prediction.Mean) / prediction.Sd;
    }

    /// <summary>What the story would show; for a soft fault the span to the neighbouring severity, where the reading falls into it.</summary>
    private string Would(int h, AnswerColumn column, Reading reading, Prediction own)
    {
        var alone = ReadingWords.Value(reading.Probe, own);
        if (reading.Said != MeterSaid.Value || !own.HasFigure)
        {
            return alone;
        }
        var at = Scale.Of(reading.Probe).To(reading.Value);
        foreach (var next in new[] { knowledge.Hypotheses[h].Milder, knowledge.Hypotheses[h].Worse })
        {
            if (next < 0 || !column.Block.Has(next) || column.Block.Alone(next, column.Index) is not { HasFigure: true } other)
            {
                continue;
            }
            var isBetween = at > Math.Min(own.Mean, other.Mean) && at < Math.Max(own.Mean, other.Mean);
            if (isBetween && Math.Abs(at - own.Mean) > 0.5 * own.Sd)
            {
                return $"{alone} to {ReadingWords.Value(reading.Probe, other)}, by how far it has gone";
            }
        }
        return alone;
    }

    /// <summary>A word, an overload or a bound is near or far, nothing between.</summary>
    private static double OfWord(double chance) =>
        chance > 0.3 ? 0
        : chance < 0.06 ? 20
        : 3;

    private void AddFuse(int h, List<string> explains)
    {
        var story = knowledge.Hypotheses[h];
        var blown = knowledge.Blown.FirstOrDefault(b =>
            b.Fuse == story.BlownFuse && knowledge.Source.Faults[b.Cause] == story.Faults.FirstOrDefault()
        );
        if (blown is not null)
        {
            var ratio = Engineering.Format(blown.Ratio, "times", 2);
            explains.Add($"{story.Faults[0]} drives {ratio} its rating through {blown.Fuse}, which blows.");
        }
    }

    private void AddWord(int h, Heard word, List<string> explains, List<string> misfits)
    {
        var (chance, healthy) = (posterior.Complaint.Chance(word, h), posterior.Complaint.Chance(word, 0));
        if (posterior.Complaint.Sounds(word, h) is { } sound)
        {
            var text = SoundWords.Say(word, sound.Channel, sound.Symptoms);
            if (chance > 0.5 && (healthy < 0.4 || word.Descriptor == Descriptor.Fine))
            {
                explains.Add($"{text}: your \"{word.Words}\".");
            }
            else if (chance < 0.12)
            {
                misfits.Add($"{text}, which is hardly \"{word.Words}\".");
            }
        }
        else if (word.Descriptor == Descriptor.RedGlow && chance > 0.5)
        {
            explains.Add("It drives a valve far past its anode watts: your \"" + word.Words + "\".");
        }
        else if (!posterior.Complaint.IsComputed(word) && chance > 0.35)
        {
            explains.Add($"Parts of this kind are often behind \"{word.Words}\" (common practice, not computed).");
        }
    }

    internal static string Listed(List<string> names) =>
        names.Count <= 4 ? string.Join(", ", names) : $"{string.Join(", ", names.Take(4))} and {names.Count - 4} more";
}
