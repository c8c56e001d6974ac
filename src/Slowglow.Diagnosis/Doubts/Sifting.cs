using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Doubts;

/// <summary>Sorts evidence before it is weighed: mistakes out, looks apart, contradictions and impossible figures set aside with a sentence.</summary>
internal sealed class Sifting(Knowledge knowledge, IProgress<double>? progress, CancellationToken cancel)
{
    public Sifted Of(IReadOnlyList<Reading> given)
    {
        Reading[] all = [.. given.SelectMany(r => r.Each())];
        Reading[] standing = [.. all.Where(r => !r.IsMistake)];
        Reading[] looks = [.. standing.Where(r => r.Said == MeterSaid.Look)];
        Reading[] figures = [.. standing.Where(r => r.Said != MeterSaid.Look)];
        var doubts = new List<string>();
        var aside = new HashSet<Reading>(ReferenceEqualityComparer.Instance);
        Disagreements.Find(figures, aside, doubts);
        Disagreements.FindLooks(looks, aside, doubts);
        var peaks = new Peaks(knowledge, progress, cancel);
        foreach (var reading in figures.Where(r => !aside.Contains(r)))
        {
            if (peaks.Refuses(reading) is { } doubt)
            {
                aside.Add(reading);
                doubts.Add(doubt);
            }
        }
        return new(
            all,
            [.. figures.Where(r => !aside.Contains(r))],
            [.. looks.Where(r => !aside.Contains(r))],
            [.. aside],
            doubts
        );
    }
}
