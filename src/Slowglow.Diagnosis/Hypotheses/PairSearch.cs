using Slowglow.Diagnosis.Likelihood;

namespace Slowglow.Diagnosis.Hypotheses;

/// <summary>
/// Finds the pairs of faults worth solving when single faults explain badly. Every pair with a first member that explains something is
/// judged by the deviations of its members laid one over the other; the best are handed on to be solved as they are.
/// </summary>
internal sealed class PairSearch(Knowledge knowledge, ReadingSet readings, IProgress<double>? progress, CancellationToken cancel)
{
    /// <summary>None-of-these above this, or readings this far off the mark under the best story, call for pairs.</summary>
    private const double NoneNotable = 0.05;
    private const double SurpriseNotable = 3.5;
    private const double SurpriseEach = 0.6;

    private const int MostFirst = 96;
    private const int MostJudged = 240;
    private const int MostSolved = 40;
    private const int EachCure = 3;

    /// <summary>
    /// A pair this many nats behind the best story, both judged by adding deviations up, is not solved: odds of twenty thousand to one, beside which
    /// what the adding leaves out is small.
    /// </summary>
    private const double FarBehind = 10;

    public static bool IsNeeded(Posterior posterior)
    {
        if (posterior.Readings.Count < 2)
        {
            return false;
        }
        var best = Array.IndexOf(posterior.Of, posterior.Of.Max());
        var surprise = posterior.Fits[best]?.Surprise ?? 0;
        return posterior.None > NoneNotable || surprise > SurpriseNotable + SurpriseEach * posterior.Readings.Count;
    }

    /// <summary>Indices of the pairs to be solved, likeliest first.</summary>
    public IReadOnlyList<int> Find()
    {
        var list = knowledge.Hypotheses;
        int[] singles =
        [
            .. Enumerable.Range(1, list.WithoutPairs - 1).Where(h => list[h].Faults.Count == 1 && list[h].Prior > 0),
        ];
        var judge = new PairJudge(readings, list);
        singles = [.. singles.Where(judge.Acts)];
        var firsts = FirstMembers(singles, judge);
        var pairs = Judge(firsts, singles, judge);
        Ensure(pairs.SelectMany(p => new[] { p.First, p.Second }));
        (int First, int Second, double Score)[] rated =
        [
            .. pairs.Select(p => (p.First, p.Second, judge.Score(p.First, p.Second) + Math.Log(Cascade(p.First, p.Second)))),
        ];
        var bound = rated.Select(p => p.Score).Concat(singles.Append(0).Select(h => judge.Score(h))).Max() - FarBehind;
        return
        [
            .. rated
                .Where(p => p.Score > bound)
                .OrderByDescending(p => p.Score)
                .GroupBy(p => (list[p.First].Part, list[p.Second].Part))
                .SelectMany(g => g.Take(EachCure))
                .OrderByDescending(p => p.Score)
                .Take(MostSolved)
                .Select(p => list.PairOf(p.First, p.Second, Prior(p.First, p.Second))),
        ];
    }

    private double Prior(int first, int second)
    {
        var list = knowledge.Hypotheses;
        return PairJudge.PairShare * list[first].Prior * list[second].Prior * Cascade(first, second);
    }

    private double Cascade(int first, int second) => knowledge.Cascades.Raise(first, second);

    /// <summary>Single faults that explain the readings best when each that they miss costs no more than not knowing.</summary>
    private int[] FirstMembers(int[] singles, PairJudge judge) =>
        [.. singles.OrderByDescending(judge.ScoreOfFirst).Take(MostFirst)];

    private List<(int First, int Second)> Judge(int[] firsts, int[] singles, PairJudge judge)
    {
        var list = knowledge.Hypotheses;
        var found = new List<(int First, int Second, double Score)>[firsts.Length];
        Parallel.For(
            0,
            firsts.Length,
            new ParallelOptions { CancellationToken = cancel },
            i =>
            {
                var best = new PriorityQueue<int, double>();
                foreach (var other in singles.Where(o => list[o].Part != list[firsts[i]].Part))
                {
                    best.Enqueue(other, judge.Score(firsts[i], other));
                    if (best.Count > EachCure * 8)
                    {
                        best.Dequeue();
                    }
                }
                found[i] = [.. best.UnorderedItems.Select(b => Ordered(firsts[i], b.Element, b.Priority))];
            }
        );
        return
        [
            .. found
                .SelectMany(f => f)
                .DistinctBy(f => (f.First, f.Second))
                .OrderByDescending(f => f.Score)
                .Take(MostJudged)
                .Select(f => (f.First, f.Second)),
        ];
    }

    /// <summary>By designator, so that one pair has one order.</summary>
    private (int, int, double) Ordered(int a, int b, double score) =>
        string.CompareOrdinal(knowledge.Hypotheses[a].Part, knowledge.Hypotheses[b].Part) < 0 ? (a, b, score) : (b, a, score);

    /// <summary>Asks the members where a hopeless single fault was not asked further, so that the second look rests on every reading.</summary>
    private void Ensure(IEnumerable<int> members)
    {
        int[] asked = [.. members.Distinct()];
        for (var i = 0; i < readings.Count; i++)
        {
            readings.Column(i).Block.Ensure(asked, progress, cancel);
        }
    }
}
