using Slowglow.Circuits;
using Slowglow.Diagnosis.Answers;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Likelihood;

/// <summary>The readings taken so far beside the columns of answers that belong to them.</summary>
internal sealed class ReadingSet
{
    /// <summary>A meter that shows a figure where a hypothesis has none to give: leakage, fingers, a slip.</summary>
    private const double FigureForNone = 0.05;

    /// <summary>How often the meter alone decides what a floating net shows, and how near to nothing that is. Judgement.</summary>
    private const double PulledToZero = 0.6;
    private const double PulledVolts = 0.03;
    private const double PulledLog = 0.5;

    private readonly Reading[] readings;
    private readonly AnswerColumn[] columns;
    private readonly Prediction[] healthy;
    private readonly Broad[] broads;
    private readonly double[] scaled;

    /// <param name="columns">One for each reading; the healthy unit must have been asked.</param>
    public ReadingSet(IReadOnlyList<Reading> readings, IReadOnlyList<AnswerColumn> columns, double reach)
    {
        (this.readings, this.columns) = ([.. readings], [.. columns]);
        scaled = [.. readings.Select(r => Scale.Of(r.Probe).To(r.Value))];
        healthy = [.. columns.Select(c => c.Block.Alone(0, c.Index))];
        broads = [.. columns.Select(c => new Broad(c.Probe, c.Block.Alone(0, c.Index), reach))];
    }

    public int Count => readings.Length;
    public Reading this[int i] => readings[i];

    public AnswerColumn Column(int i) => columns[i];

    public double Scaled(int i) => scaled[i];

    /// <summary>True for a plain figure; everything else is an inequality or a word.</summary>
    public bool IsFigure(int i) => readings[i].Said == MeterSaid.Value && !double.IsNaN(readings[i].Value);

    public Broad BroadOf(int i) => broads[i];

    /// <summary>Log probability of a reading, taken by itself, under a prediction.</summary>
    public double LogAlone(int i, Prediction prediction)
    {
        if (prediction.Kind == AnswerKind.NotApplicable)
        {
            return 0;
        }
        if (!IsFigure(i))
        {
            return SaidOdds.Log(readings[i], prediction, healthy[i], broads[i]);
        }
        return prediction.HasFigure
            ? StudentT.LogDensity((scaled[i] - prediction.Mean) / prediction.Sd, prediction.Sd)
            : WithoutFigure(i, prediction.Kind);
    }

    /// <summary>Log probability of a reading to one that does not know.</summary>
    public double LogUnknown(int i) =>
        IsFigure(i) ? broads[i].LogDensity(scaled[i]) : SaidOdds.LogUnknown(readings[i], broads[i]);

    /// <summary>Log density of a figure under a hypothesis that has none to give.</summary>
    public double WithoutFigure(int i, AnswerKind kind)
    {
        var isResistance = readings[i].Probe.Kind is ProbeKind.Ohm or ProbeKind.Diode;
        var slip = kind != AnswerKind.Unsettled && isResistance ? Math.Log(FigureForNone) : 0;
        var broad = broads[i].LogDensity(scaled[i]) + slip;
        return kind == AnswerKind.Floating && !isResistance ? OrPulledToZero(i, broad) : broad;
    }

    /// <summary>A net that nothing holds goes where the meter's own resistance pulls it, which is nothing, unless a junction beside it has its say.</summary>
    private double OrPulledToZero(int i, double broad)
    {
        var scale = Scale.Of(readings[i].Probe);
        var width = scale.IsLinear ? PulledVolts : PulledLog;
        var atZero = StudentT.LogDensity((scaled[i] - scale.To(0)) / width, width);
        return Math.Log((PulledToZero * Math.Exp(atZero)) + ((1 - PulledToZero) * Math.Exp(broad)));
    }

    /// <summary>Log joint density under none-of-these.</summary>
    public double LogNone()
    {
        double sum = 0;
        for (var i = 0; i < Count; i++)
        {
            sum += LogUnknown(i);
        }
        return sum;
    }
}
