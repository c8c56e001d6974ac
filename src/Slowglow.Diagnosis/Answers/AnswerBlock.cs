using System.Runtime.CompilerServices;
using Slowglow.Circuits;
using Slowglow.Diagnosis.Hypotheses;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Diagnosis.Source;
using Slowglow.Sheets.Readings;
using Slowglow.Sheets.Setups;

namespace Slowglow.Diagnosis.Answers;

/// <summary>
/// What every hypothesis says to a list of probes in one setup, asked for once and kept, on the probes' scales. Each answer has a column for
/// each random parameter and two last ones for the gaps to the neighbouring severities of soft faults (two faults at once have two).
/// </summary>
internal sealed class AnswerBlock
{
    /// <summary>Part of the step between neighbouring severities that one standard deviation covers: half a gap of even chance, a little over.</summary>
    private const double GapShare = 0.35;

    /// <summary>A spread wider than this (in logarithms) says only that the figure is unknown.</summary>
    private const double WidestLog = 1.0;

    private readonly IWorldSource source;
    private readonly HypothesisList hypotheses;
    private readonly MeterClass meter;
    private readonly double widestDc;
    private readonly HashSet<int> pairsWithoutGap = [];

    /// <summary>Asked for themselves and not only as a neighbour: their gaps are final.</summary>
    private readonly HashSet<int> betweenBoth = [];
    private AnswerKind[]?[] kinds;
    private double[]?[] means;
    private float[]?[] spreads;
    private double[]?[] variances;
    private readonly WorldEdge edge;
    private readonly HashSet<int> onEdge = [];

    public AnswerBlock(
        IWorldSource source,
        HypothesisList hypotheses,
        Setup setup,
        IReadOnlyList<Probe> probes,
        MeterClass meter,
        double widestDc
    )
    {
        (this.source, this.hypotheses, this.meter, this.widestDc) = (source, hypotheses, meter, widestDc);
        (Setup, Probes, Columns) = (setup, probes, source.Parameters.Count + 2);
        kinds = new AnswerKind[hypotheses.Count][];
        means = new double[hypotheses.Count][];
        spreads = new float[hypotheses.Count][];
        variances = new double[hypotheses.Count][];
        edge = new WorldEdge(source.Sheet, probes);
    }

    public Setup Setup { get; }
    public IReadOnlyList<Probe> Probes { get; }

    /// <summary>Columns of a spread.</summary>
    public int Columns { get; }

    public bool Has(int hypothesis) => hypothesis < kinds.Length && kinds[hypothesis] is not null;

    public AnswerKind KindOf(int hypothesis, int probe) => kinds[hypothesis]![probe];

    /// <summary>Nominal answer on the probe's scale.</summary>
    public double MeanOf(int hypothesis, int probe) => means[hypothesis]![probe];

    /// <summary>Change of the answer for one standard deviation of each parameter.</summary>
    public ReadOnlySpan<float> SpreadOf(int hypothesis, int probe) => spreads[hypothesis].AsSpan(probe * Columns, Columns);

    /// <summary>Variance over tolerances alone.</summary>
    public double SpreadVarianceOf(int hypothesis, int probe) => variances[hypothesis]![probe];

    /// <summary>Whether real units with this fault may stand elsewhere than the nominal one does.</summary>
    public bool IsOnEdge(int hypothesis) => onEdge.Contains(hypothesis);

    /// <summary>Prediction before any other reading is known: tolerances, meter and model.</summary>
    public Prediction Alone(int hypothesis, int probe)
    {
        var kind = kinds[hypothesis]![probe];
        if (kind != AnswerKind.Value)
        {
            return new(kind, double.NaN, double.NaN);
        }
        var mean = means[hypothesis]![probe];
        var variance = variances[hypothesis]![probe] + ErrorVariance(probe, mean);
        return new(kind, mean, Math.Sqrt(variance));
    }

    /// <summary>Variance of meter and model at a value on the scale, and of what is left where nothing should be.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double ErrorVariance(int probe, double scaled)
    {
        var value = Scale.Of(Probes[probe]).From(scaled);
        var error = ErrorModel.Variance(Probes[probe], meter, value);
        return Has(0) && kinds[0]![probe] == AnswerKind.Value
            ? error + Residue.Variance(Probes[probe], value, Scale.Of(Probes[probe]).From(means[0]![probe]))
            : error;
    }

    /// <summary>Solves the hypotheses that have not been asked yet, with their neighbours in severity.</summary>
    public void Ensure(IEnumerable<int> wanted, IProgress<double>? progress, CancellationToken cancel)
    {
        int[] asked = [.. wanted.Distinct()];
        int[] missing = [.. asked.SelectMany(WithNeighbours).Where(h => !Has(h)).Distinct()];
        if (missing.Length > 0 && Probes.Count > 0)
        {
            Grow();
            var sets = missing.Select(hypotheses.FaultsOf).ToList();
            var answers = source.Ask(Setup, sets, Probes, meter, progress, cancel);
            for (var i = 0; i < missing.Length; i++)
            {
                Keep(missing[i], answers[i]);
            }
        }
        foreach (var h in missing.Concat(asked).Where(h => Has(h) && !betweenBoth.Contains(h)))
        {
            SetGaps(h);
        }
        betweenBoth.UnionWith(asked.Where(Has));
        AddPairGaps();
    }

    /// <summary>Room for the pairs that have come under suspicion since.</summary>
    private void Grow()
    {
        if (kinds.Length < hypotheses.Count)
        {
            Array.Resize(ref kinds, hypotheses.Count);
            Array.Resize(ref means, hypotheses.Count);
            Array.Resize(ref spreads, hypotheses.Count);
            Array.Resize(ref variances, hypotheses.Count);
        }
    }

    private IEnumerable<int> WithNeighbours(int h)
    {
        yield return h;
        if (hypotheses[h].Milder >= 0)
        {
            yield return hypotheses[h].Milder;
        }
        if (hypotheses[h].Worse >= 0)
        {
            yield return hypotheses[h].Worse;
        }
    }

    private void Keep(int h, Answer[] answers)
    {
        var (rowKinds, rowMeans) = (new AnswerKind[Probes.Count], new double[Probes.Count]);
        var (row, rowVariances) = (new float[Probes.Count * Columns], new double[Probes.Count]);
        for (var p = 0; p < Probes.Count; p++)
        {
            var answer = answers[p];
            var usable = answer.HasValue && double.IsFinite(answer.Value);
            rowKinds[p] = answer.HasValue && !usable ? AnswerKind.Unsettled : answer.Kind;
            if (usable)
            {
                rowMeans[p] = Scale.Of(Probes[p]).To(answer.Value);
                rowVariances[p] = KeepSpread(answer, p, row.AsSpan(p * Columns, Columns));
            }
        }
        if (!Setup.PowerOff && edge.IsOnEdge(answers))
        {
            onEdge.Add(h);
        }
        (kinds[h], means[h], spreads[h], variances[h]) = (rowKinds, rowMeans, row, rowVariances);
    }

    private double KeepSpread(Answer answer, int p, Span<float> row)
    {
        var scale = Scale.Of(Probes[p]);
        var slope = scale.Slope(answer.Value);
        double sum = 0;
        for (var k = 0; k < answer.Spread.Length && k < row.Length - 1; k++)
        {
            var width = LawWidth.Of(source.Parameters[k], Probes[p]);
            row[k] = double.IsFinite(answer.Spread[k]) ? (float)(answer.Spread[k] * slope * width) : 0;
            sum += (double)row[k] * row[k];
        }
        var widest = scale.IsLinear ? widestDc : WidestLog;
        if (sum <= widest * widest)
        {
            return sum;
        }
        var shrink = (float)(widest / Math.Sqrt(sum));
        for (var k = 0; k < row.Length; k++)
        {
            row[k] *= shrink;
        }
        return widest * widest;
    }

    /// <summary>
    /// The last column but one of soft faults. One known neighbour is enough until the fault itself is asked for: both are known then.
    /// </summary>
    private void SetGaps(int h)
    {
        if (hypotheses[h].Members is not null)
        {
            pairsWithoutGap.Add(h);
            return;
        }
        var (milder, worse) = (hypotheses[h].Milder, hypotheses[h].Worse);
        if (milder < 0 && worse < 0)
        {
            return;
        }
        for (var p = 0; p < Probes.Count; p++)
        {
            if (kinds[h]![p] == AnswerKind.Value)
            {
                ref var kept = ref spreads[h]![p * Columns + Columns - 2];
                variances[h]![p] -= (double)kept * kept;
                kept = (float)Math.Clamp(GapShare * Step(h, milder, worse, p), -GapLimit(p), GapLimit(p));
                variances[h]![p] += (double)kept * kept;
            }
        }
    }

    /// <summary>Two faults at once have the gaps of each, once both have been asked alone.</summary>
    private void AddPairGaps()
    {
        foreach (var h in pairsWithoutGap.Where(AreMembersKnown).ToList())
        {
            var (first, second) = hypotheses[h].Members!.Value;
            for (var p = 0; p < Probes.Count; p++)
            {
                if (kinds[h]![p] == AnswerKind.Value)
                {
                    CopyGap(first, h, p, Columns - 2);
                    CopyGap(second, h, p, Columns - 1);
                }
            }
            pairsWithoutGap.Remove(h);
        }
    }

    private bool AreMembersKnown(int pair) => hypotheses[pair].Members is var (first, second) && Has(first) && Has(second);

    private void CopyGap(int single, int pair, int p, int column)
    {
        var gap = spreads[single]![p * Columns + Columns - 2];
        spreads[pair]![p * Columns + column] = gap;
        variances[pair]![p] += gap * gap;
    }

    private double GapLimit(int p) => Scale.Of(Probes[p]).IsLinear ? widestDc : WidestLog;

    /// <summary>Mean step of the answer from the milder neighbour to this fault and from this one to the worse neighbour.</summary>
    private double Step(int h, int milder, int worse, int p)
    {
        var here = means[h]![p];
        double sum = 0;
        var count = 0;
        if (worse >= 0 && Has(worse) && kinds[worse]![p] == AnswerKind.Value)
        {
            sum += means[worse]![p] - here;
            count++;
        }
        if (milder >= 0 && Has(milder) && kinds[milder]![p] == AnswerKind.Value)
        {
            sum += here - means[milder]![p];
            count++;
        }
        return count == 0 ? 0 : sum / count;
    }
}
