using Slowglow.Diagnosis.Answers;
using Slowglow.Diagnosis.Complaints;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Quantities;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Suspects;

/// <summary>Tells what a fault does from the part outwards, in the unit as it is used: its own pins, the rails, the stages, the sound.</summary>
internal sealed class ChainWords(Knowledge knowledge, CancellationToken cancel)
{
    /// <summary>A point has moved when it is this many widths off and by this share.</summary>
    private const double Widths = 3;
    private const double Share = 0.05;
    private const double LeastVolts = 0.3;
    private const int MostPoints = 3;

    /// <summary>Less than this is no volts.</summary>
    private const double DeadVolts = 0.05;

    private readonly AnswerBlock block = knowledge.BlockOf(Setup.Default);

    /// <summary>Sentences, cause first; empty for the healthy unit and where nothing is worked out.</summary>
    public IEnumerable<string> Of(int hypothesis)
    {
        var story = knowledge.Hypotheses[hypothesis];
        if (story.IsHealthy || !block.Has(hypothesis) || !block.Has(0))
        {
            yield break;
        }
        int[] dc = [.. Moved(hypothesis, ProbeKind.Dc)];
        var own = OwnNets(story);
        int[] near = [.. dc.Where(p => own.Contains(block.Probes[p].Red)).Take(MostPoints)];
        int[] rails = [.. dc.Where(p => !near.Contains(p) && IsRail(p)).Take(MostPoints)];
        int[] stages = [.. dc.Where(p => !near.Contains(p) && !rails.Contains(p)).Take(MostPoints)];
        string[] parts = [.. Together(near, hypothesis), .. Rails(rails, hypothesis), .. Together(stages, hypothesis)];
        yield return $"{Head(story)}: {(parts.Length > 0 ? string.Join("; ", parts) : Little(hypothesis))}.";
        foreach (var sentence in new ChannelChain(knowledge, block, cancel).Of(hypothesis, own))
        {
            yield return sentence;
        }
    }

    /// <summary>Nothing leaves the band of healthy units: what moves within it is named all the same.</summary>
    private string Little(int h)
    {
        int[] within = [.. Moved(h, ProbeKind.Dc, 0).Take(MostPoints)];
        return within.Length == 0
            ? $"no DC point that can be reached moves by more than {Engineering.Format(100 * Share, "%", 2)}"
            : $"{string.Join(", ", Together(within, h))}, no further than healthy units differ";
    }

    private static string Head(Hypothesis story) =>
        story.BlownFuse is { } fuse ? $"With {fuse} blown by {story.Faults[0]}" : string.Join(" and ", story.Faults);

    private IEnumerable<string> Rails(int[] points, int h)
    {
        var lead = points.Length == 1 ? "the rail " : "the rails ";
        return Together(points, h).Select((words, i) => i == 0 ? lead + words : words);
    }

    /// <summary>Points that end at nothing are named together; the others each with its figures.</summary>
    private IEnumerable<string> Together(int[] points, int h)
    {
        int[] dead = [.. points.Where(p => Math.Abs(block.MeanOf(h, p)) < DeadVolts)];
        if (dead.Length > 0)
        {
            var names = dead.Select(p =>
                $"{block.Probes[p].Where} (healthy: {ReadingWords.Value(block.Probes[p], block.MeanOf(0, p))})"
            );
            yield return $"{string.Join(" and ", names)} {(dead.Length == 1 ? "loses its volts" : "lose their volts")}";
        }
        int[] live = [.. points.Except(dead)];
        if (live.Length > 0)
        {
            yield return string.Join(", ", live.Select(p => Say(p, h)));
        }
    }

    private string Say(int p, int h)
    {
        var (now, good) = (block.MeanOf(h, p), block.MeanOf(0, p));
        var probe = block.Probes[p];
        return $"{probe.Where} {Verb(now, good)} {ReadingWords.Value(probe, now)} (healthy: {ReadingWords.Value(probe, good)})";
    }

    private static string Verb(double now, double good) =>
        now < 0 || good < 0 ? "goes to"
        : Math.Abs(now) > Math.Abs(good) ? "rises to"
        : "falls to";

    /// <summary>Points off the healthy figure, the farthest first in its own terms.</summary>
    private IEnumerable<int> Moved(int h, ProbeKind kind, double widths = Widths)
    {
        var moved = new List<(int Point, double By)>();
        for (var p = 0; p < block.Probes.Count; p++)
        {
            var (now, good) = (block.Alone(h, p), block.Alone(0, p));
            if (
                block.Probes[p].Kind != kind
                || block.Probes[p].Black != Sheets.NetTable.Ground
                || !now.HasFigure
                || !good.HasFigure
            )
            {
                continue;
            }
            var off = Math.Abs(now.Mean - good.Mean);
            if (off > widths * good.Sd && off > LeastVolts && off > Share * Math.Abs(good.Mean))
            {
                moved.Add((p, off / good.Sd));
            }
        }
        return moved.OrderByDescending(m => m.By).Select(m => m.Point).DistinctBy(p => block.Probes[p].Red);
    }

    private bool IsRail(int p) =>
        block.Probes.Any(q => q.SaidAsRipple && q.Red == block.Probes[p].Red)
        && Math.Abs(block.MeanOf(0, p)) > knowledge.Answers.Reach / 4;

    private HashSet<string> OwnNets(Hypothesis story) =>
        [.. story.Faults.SelectMany(f => knowledge.Parts.TryGetValue(f.Part, out var part) ? part.Pins.Select(x => x.Net) : [])];
}
