using Slowglow.Circuits;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Diagnosis.Next;

namespace Slowglow.Diagnosis.Suspects;

/// <summary>Gathers the hypotheses by what one would replace, and puts parts that no reading on offer can tell apart into one group.</summary>
internal sealed class CureGroups
{
    /// <summary>Two stories whose predictions nowhere differ by more than this many standard deviations cannot be told apart.</summary>
    private const double Apart = 1.3;

    /// <summary>Only parts this likely are compared.</summary>
    private const double WorthComparing = 0.004;
    private const int MostCompared = 24;

    /// <summary>Share of a part's probability that must look like the leader for the part to join.</summary>
    private const double LookAlike = 0.7;

    private readonly Posterior posterior;
    private readonly IReadOnlyList<Bench> benches;
    private readonly Dictionary<int, Prediction[][]> predictions = [];

    public CureGroups(Knowledge knowledge, Posterior posterior, IReadOnlyList<Bench> benches)
    {
        (this.posterior, this.benches) = (posterior, benches);
        var list = knowledge.Hypotheses;
        var parts = Enumerable
            .Range(1, posterior.Of.Length - 1)
            .Where(h => posterior.Of[h] > 1e-9)
            .GroupBy(h => CureOf(list[h]))
            .Select(g => new Cure(PartsOf(g.Key), [.. g.OrderByDescending(h => posterior.Of[h])], g.Sum(h => posterior.Of[h]))
            {
                IsPair = g.Key.Item2.Length > 0,
            })
            .OrderByDescending(c => c.Probability)
            .ToList();
        Cures = Join(parts);
    }

    /// <summary>Groups, likeliest first.</summary>
    public IReadOnlyList<Cure> Cures { get; }

    private static (string, string) CureOf(Hypothesis story) => (story.Part, story.Members is null ? "" : story.Faults[^1].Part);

    private static string[] PartsOf((string First, string Second) cure) =>
        cure.Second.Length == 0 ? [cure.First] : [cure.First, cure.Second];

    private List<Cure> Join(List<Cure> parts)
    {
        var cures = new List<Cure>();
        var free = new LinkedList<Cure>(parts);
        var compared = 0;
        while (free.First is { } first)
        {
            var leader = first.Value;
            free.RemoveFirst();
            if (!leader.IsPair && leader.Probability > WorthComparing && compared++ < MostCompared)
            {
                leader = WithLookAlikes(leader, free);
            }
            cures.Add(leader);
        }
        return [.. cures.OrderByDescending(c => c.Probability)];
    }

    private Cure WithLookAlikes(Cure leader, LinkedList<Cure> free)
    {
        var main = leader.Hypotheses[0];
        var joined = leader;
        for (var node = free.First; node is not null; )
        {
            var next = node.Next;
            if (!node.Value.IsPair && node.Value.Probability > WorthComparing && LooksLike(main, node.Value))
            {
                joined = joined.With(node.Value);
                free.Remove(node);
            }
            node = next;
        }
        return joined with { Hypotheses = [.. joined.Hypotheses.OrderByDescending(h => posterior.Of[h])] };
    }

    private bool LooksLike(int main, Cure other)
    {
        double alike = 0;
        var left = other.Probability;
        foreach (var h in other.Hypotheses)
        {
            if (IsAlike(main, h))
            {
                alike += posterior.Of[h];
            }
            left -= posterior.Of[h];
            if (alike + left < LookAlike * other.Probability || alike > LookAlike * other.Probability)
            {
                break;
            }
        }
        return alike > LookAlike * other.Probability;
    }

    private bool IsAlike(int a, int b)
    {
        var (ofA, ofB) = (Predictions(a), Predictions(b));
        for (var s = 0; s < benches.Count; s++)
        {
            for (var p = 0; p < Math.Min(ofA[s].Length, ofB[s].Length); p++)
            {
                if (Distance(ofA[s][p], ofB[s][p]) > Apart)
                {
                    return false;
                }
            }
        }
        return true;
    }

    private static double Distance(Prediction a, Prediction b)
    {
        if (a.HasFigure && b.HasFigure)
        {
            return Math.Abs(a.Mean - b.Mean) / Math.Sqrt((a.Sd * a.Sd + b.Sd * b.Sd) / 2);
        }
        return IsOpen(a.Kind) == IsOpen(b.Kind) && a.HasFigure == b.HasFigure ? 0 : double.PositiveInfinity;
    }

    private static bool IsOpen(AnswerKind kind) => kind is AnswerKind.Overload or AnswerKind.Floating;

    private Prediction[][] Predictions(int h)
    {
        if (!predictions.TryGetValue(h, out var of))
        {
            of = [.. benches.Select(b => Predict(b, h))];
            predictions.Add(h, of);
        }
        return of;
    }

    private Prediction[] Predict(Bench bench, int h) =>
        bench.Block.Has(h) && posterior.Fits[h] is { } fit
            ? [.. Enumerable.Range(0, bench.Block.Probes.Count).Select(p => fit.Predict(bench.Block, p))]
            : [];
}
