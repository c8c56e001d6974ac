using Slowglow.Circuits;
using Slowglow.Diagnosis.Likelihood;

namespace Slowglow.Diagnosis.Hypotheses;

/// <summary>
/// Judges two faults at once without solving them: the deviations of each from the healthy unit are added. Where only one of them acts on a
/// reading that is exact to first order; where both do, the sum is trusted less.
/// </summary>
internal sealed class PairJudge
{
    /// <summary>
    /// Common practice, no source: one unit in twenty comes in with two faults that have nothing to do with each other. Over all ordered halves of
    /// pairs the products of priors sum to a half at most.
    /// </summary>
    public const double PairShare = 2 * 0.05;

    /// <summary>Share of the smaller deviation by which a sum of two may be off.</summary>
    private const double Overlap = 0.6;

    /// <summary>Widths of the healthy prediction from which a fault is taken to act on a reading.</summary>
    private const double MovesWidths = 1;

    private readonly ReadingSet readings;
    private readonly double[] logPriors;
    private readonly double logShare = Math.Log(PairShare);
    private readonly Prediction[][] predictions;

    public PairJudge(ReadingSet readings, HypothesisList list)
    {
        this.readings = readings;
        logPriors = [.. Enumerable.Range(0, list.WithoutPairs).Select(h => Math.Log(Math.Max(list[h].Prior, 1e-300)))];
        predictions = new Prediction[list.WithoutPairs][];
        Parallel.For(0, predictions.Length, h => predictions[h] = Predict(h));
    }

    /// <summary>True when the fault moves a reading; one that moves none explains nothing beside another. Those not asked yet may.</summary>
    public bool Acts(int h)
    {
        for (var i = 0; Known(h) && i < readings.Count; i++)
        {
            var (now, healthy) = (predictions[h][i], predictions[0][i]);
            if (now.HasFigure != healthy.HasFigure || Math.Abs(now.Mean - healthy.Mean) > MovesWidths * healthy.Sd)
            {
                return true;
            }
        }
        return !Known(h);
    }

    /// <summary>Log of prior and likelihood of one story, each reading taken by itself; minus infinity where it was not asked.</summary>
    public double Score(int h) => Sum(h, _ => double.NegativeInfinity);

    /// <summary>The same, where a reading that the fault misses costs no more than not knowing: the other of two may explain it.</summary>
    public double ScoreOfFirst(int h) => Sum(h, readings.LogUnknown);

    /// <summary>Log of prior and likelihood of both at once.</summary>
    public double Score(int a, int b)
    {
        var score = logShare + logPriors[a] + logPriors[b];
        for (var i = 0; i < readings.Count; i++)
        {
            score += Known(a) && Known(b) ? readings.LogAlone(i, Both(a, b, i)) : readings.LogUnknown(i);
        }
        return score;
    }

    private double Sum(int h, Func<int, double> least)
    {
        var (score, isKnown) = (logPriors[h], Known(h));
        for (var i = 0; i < readings.Count; i++)
        {
            score += Math.Max(isKnown ? readings.LogAlone(i, predictions[h][i]) : double.NegativeInfinity, least(i));
        }
        return score;
    }

    private bool Known(int h) => predictions[h].Length > 0 || (predictions[h] = Predict(h)).Length > 0;

    private Prediction[] Predict(int h)
    {
        for (var i = 0; i < readings.Count; i++)
        {
            if (!readings.Column(i).Block.Has(h))
            {
                return [];
            }
        }
        return [.. Enumerable.Range(0, readings.Count).Select(i => readings.Column(i).Block.Alone(h, readings.Column(i).Index))];
    }

    private Prediction Both(int a, int b, int i)
    {
        var (first, second, healthy) = (predictions[a][i], predictions[b][i], predictions[0][i]);
        if (!first.HasFigure || !second.HasFigure || !healthy.HasFigure)
        {
            return first.HasFigure ? second : first;
        }
        var (da, db) = (first.Mean - healthy.Mean, second.Mean - healthy.Mean);
        var shared = Overlap * Math.Min(Math.Abs(da), Math.Abs(db));
        var sd = Math.Abs(da) > Math.Abs(db) ? first.Sd : second.Sd;
        return new(AnswerKind.Value, healthy.Mean + da + db, Math.Sqrt(sd * sd + shared * shared));
    }
}
