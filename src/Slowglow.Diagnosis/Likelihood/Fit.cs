using System.Numerics;
using System.Runtime.CompilerServices;
using Slowglow.Circuits;
using Slowglow.Diagnosis.Answers;

namespace Slowglow.Diagnosis.Likelihood;

/// <summary>
/// How a hypothesis fits the readings, one after the other: each is judged by what the hypothesis expects once it knows those before it
/// (whitening by Cholesky), so that rails that move together count once.
/// </summary>
internal sealed class Fit
{
    /// <summary>A residual larger than this is taken as an oddity and pulls other predictions no further.</summary>
    private const double Pull = 3;

    /// <summary>Of the units with a fault whose nominal world stands on an edge, the share to be found elsewhere. Judgement.</summary>
    private const double Astray = 0.4;

    private readonly ReadingSet readings;
    private readonly int hypothesis;
    private readonly List<int> figures = [];
    private readonly List<double[]> factor = [];
    private readonly List<double> whitened = [];

    public Fit(ReadingSet readings, int hypothesis)
    {
        (this.readings, this.hypothesis) = (readings, hypothesis);
        Residuals = new double[readings.Count];
        double near = 0;
        double elsewhere = 0;
        var edge = false;
        for (var i = 0; i < readings.Count; i++)
        {
            var log = Add(i);
            near += log;
            var here = readings.Column(i).Block.IsOnEdge(hypothesis);
            elsewhere += here ? readings.LogUnknown(i) : log;
            edge |= here;
        }
        LogLikelihood = edge ? Either(near, elsewhere) : near;
    }

    /// <summary>The unit is where its nominal world is, or nobody knows where; <see cref="IsAstray"/> says which is likelier.</summary>
    private double Either(double near, double elsewhere)
    {
        var (stays, strays) = (Math.Log(1 - Astray) + near, Math.Log(Astray) + elsewhere);
        IsAstray = strays > stays;
        for (var i = 0; IsAstray && i < readings.Count; i++)
        {
            Residuals[i] = readings.Column(i).Block.IsOnEdge(hypothesis) ? double.NaN : Residuals[i];
        }
        var top = Math.Max(stays, strays);
        return top + Math.Log(Math.Exp(stays - top) + Math.Exp(strays - top));
    }

    /// <summary>Log of the joint density of all readings.</summary>
    public double LogLikelihood { get; }

    /// <summary>The unit stands elsewhere than its nominal world does, beyond an edge: that world says nothing of it while it is powered.</summary>
    public bool IsAstray { get; private set; }

    /// <summary>Nats lost to readings off the mark: zero when every reading is just where the hypothesis expects it.</summary>
    public double Surprise { get; private set; }

    /// <summary>By reading: distance from this hypothesis' own prediction in standard deviations, alone; NaN without a figure on both sides.</summary>
    public double[] Residuals { get; }

    private double Add(int i)
    {
        var column = readings.Column(i);
        var kind = column.Block.KindOf(hypothesis, column.Index);
        Residuals[i] = double.NaN;
        if (kind == AnswerKind.NotApplicable)
        {
            return 0;
        }
        if (!readings.IsFigure(i))
        {
            return Surprising(readings.LogAlone(i, column.Block.Alone(hypothesis, column.Index)));
        }
        if (kind != AnswerKind.Value)
        {
            return readings.WithoutFigure(i, kind);
        }
        return AddFigure(i, column);
    }

    private double AddFigure(int i, AnswerColumn column)
    {
        var mean = column.Block.MeanOf(hypothesis, column.Index);
        var own = column.Block.SpreadVarianceOf(hypothesis, column.Index) + column.Block.ErrorVariance(column.Index, mean);
        var y = readings.Scaled(i);
        Residuals[i] = (y - mean) / Math.Sqrt(own);
        var (row, shift, variance) = Condition(column);
        var sd = Math.Sqrt(Math.Max(own - variance, 0.05 * own));
        var z = (y - mean - shift) / sd;
        figures.Add(i);
        factor.Add([.. row, sd]);
        whitened.Add(Math.Clamp(z, -Pull, Pull));
        Surprise += StudentT.LogDensity(0, sd) - StudentT.LogDensity(z, sd);
        return StudentT.LogDensity(z, sd);
    }

    private double Surprising(double log)
    {
        Surprise -= log;
        return log;
    }

    /// <summary>What the hypothesis expects of a probe, knowing the readings.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public Prediction Predict(AnswerBlock block, int probe)
    {
        var kind = block.KindOf(hypothesis, probe);
        if (kind != AnswerKind.Value)
        {
            return new(kind, double.NaN, double.NaN);
        }
        if (IsAstray && block.IsOnEdge(hypothesis))
        {
            return new(AnswerKind.Unsettled, double.NaN, double.NaN);
        }
        var mean = block.MeanOf(hypothesis, probe);
        var error = block.ErrorVariance(probe, mean);
        var own = block.SpreadVarianceOf(hypothesis, probe);
        var (_, shift, variance) = Condition(new(block, probe));
        return new(kind, mean + shift, Math.Sqrt(Math.Max(own - variance, 0) + error));
    }

    /// <summary>Forward substitution: the covariances with the readings so far, whitened; the shift and the variance they explain.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private (double[] Row, double Shift, double Variance) Condition(AnswerColumn column)
    {
        var row = new double[figures.Count];
        double shift = 0;
        double variance = 0;
        var spread = column.Block.SpreadOf(hypothesis, column.Index);
        for (var j = 0; j < row.Length; j++)
        {
            var other = readings.Column(figures[j]);
            var sum = Dot(spread, other.Block.SpreadOf(hypothesis, other.Index));
            for (var k = 0; k < j; k++)
            {
                sum -= factor[j][k] * row[k];
            }
            row[j] = sum / factor[j][j];
            shift += row[j] * whitened[j];
            variance += row[j] * row[j];
        }
        return (row, shift, variance);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double Dot(ReadOnlySpan<float> a, ReadOnlySpan<float> b)
    {
        var lanes = Vector<float>.Zero;
        var i = 0;
        for (; i <= a.Length - Vector<float>.Count; i += Vector<float>.Count)
        {
            lanes += new Vector<float>(a[i..]) * new Vector<float>(b[i..]);
        }
        double sum = Vector.Sum(lanes);
        for (; i < a.Length; i++)
        {
            sum += (double)a[i] * b[i];
        }
        return sum;
    }
}
