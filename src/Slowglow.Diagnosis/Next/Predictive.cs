using System.Runtime.CompilerServices;
using Slowglow.Circuits;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Next;

/// <summary>
/// What a reading could show: a mixture over hypotheses, cut into bins. The last bin is "no figure" (overload, or nothing that holds).
/// After a reading hundreds of thousands of these sums stand between the key and the answer: they are compiled in full at once.
/// </summary>
internal sealed class Predictive
{
    /// <summary>Figures told apart by a limit that is enough for anything.</summary>
    public const int MostEdges = 30;

    /// <summary>Where a prediction puts edges, in widths from its centre.</summary>
    private static readonly double[] Smear = [-3.2, -1.3, 0, 1.3, 3.2];

    private readonly double[,] chances;

    private Predictive(double[] edges, double[,] chances, double covered) =>
        (Edges, this.chances, Covered) = (edges, chances, covered);

    /// <summary>Upper edges of all figure bins but the last, on the probe's scale, rising.</summary>
    public double[] Edges { get; }

    /// <summary>Bins: figures and one for none.</summary>
    public int Bins => Edges.Length + 2;

    /// <summary>Cures, with "nothing wrong" and "none of these" at the end.</summary>
    public int Cures => chances.GetLength(0);

    /// <summary>Probability of the hypotheses that had an answer.</summary>
    public double Covered { get; }

    /// <summary>Joint probability of a cure and a bin.</summary>
    public double At(int cure, int bin) => chances[cure, bin];

    /// <summary>Expected information about the cure, bits.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double Bits()
    {
        var cures = Cures;
        var ofCure = new double[cures];
        var ofBin = new double[Bins];
        for (var c = 0; c < cures; c++)
        {
            for (var b = 0; b < Bins; b++)
            {
                ofCure[c] += chances[c, b];
                ofBin[b] += chances[c, b];
            }
        }
        double bits = 0;
        for (var c = 0; c < cures; c++)
        {
            for (var b = 0; b < Bins; b++)
            {
                if (chances[c, b] > 1e-12)
                {
                    bits += chances[c, b] * Math.Log2(chances[c, b] * Covered / (ofCure[c] * ofBin[b]));
                }
            }
        }
        return Math.Max(bits, 0);
    }

    /// <summary>Cuts the mixture of <paramref name="active"/> and none-of-these (the last cure) into bins.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static Predictive Of(
        IReadOnlyList<Prediction?> predictions,
        IReadOnlyList<Active> active,
        int cures,
        Broad none,
        double pNone,
        Probe probe,
        int most
    )
    {
        var edges = EdgesOf(predictions, active, most);
        var chances = new double[cures, edges.Length + 2];
        var covered = pNone;
        var bins = new double[edges.Length + 2];
        for (var i = 0; i < active.Count; i++)
        {
            if (predictions[i] is { } prediction)
            {
                covered += active[i].Probability;
                Fill(bins, prediction, edges, none, probe);
                for (var b = 0; b < bins.Length; b++)
                {
                    chances[active[i].Cure, b] += active[i].Probability * bins[b];
                }
            }
        }
        FillBroad(bins, edges, none, OpenUnknown(probe, none));
        for (var b = 0; b < bins.Length; b++)
        {
            chances[cures - 1, b] += pNone * bins[b];
        }
        return new(edges, chances, covered);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static void Fill(double[] bins, Prediction prediction, double[] edges, Broad none, Probe probe)
    {
        if (!prediction.HasFigure)
        {
            var isOpen = prediction.Kind is AnswerKind.Overload or AnswerKind.Floating && CanOverload(probe);
            FillBroad(bins, edges, none, isOpen ? 0.97 : OpenUnknown(probe, none));
            return;
        }
        var open = CanOverload(probe) ? OverloadOdds.OfFigure(probe, prediction.Mean) : 0;
        double before = 0;
        for (var e = 0; e < edges.Length; e++)
        {
            var below = StudentT.CumulativeNearly((edges[e] - prediction.Mean) / prediction.Sd);
            bins[e] = (1 - open) * (below - before);
            before = below;
        }
        bins[edges.Length] = (1 - open) * (1 - before);
        bins[edges.Length + 1] = open;
    }

    /// <summary>Only ohms and the diode test have an overload; a volts range shows something on a net that nothing holds.</summary>
    private static bool CanOverload(Probe probe) => probe.Kind is ProbeKind.Ohm or ProbeKind.Diode;

    internal static double OpenUnknown(Probe probe, Broad none) => CanOverload(probe) ? Math.Exp(none.LogOverload()) : 0;

    internal static void FillBroad(double[] bins, double[] edges, Broad none, double open)
    {
        double before = 0;
        for (var e = 0; e < edges.Length; e++)
        {
            var below = none.Below(edges[e]);
            bins[e] = (1 - open) * Math.Max(below - before, 0);
            before = below;
        }
        bins[edges.Length] = (1 - open) * Math.Max(1 - before, 0);
        bins[edges.Length + 1] = open;
    }

    /// <summary>Edges at even steps of the weight of all predictions, each smeared over its width.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    internal static double[] EdgesOf(IReadOnlyList<Prediction?> predictions, IReadOnlyList<Active> active, int most)
    {
        var at = new double[Smear.Length * active.Count];
        var points = new (double Weight, double Sd)[at.Length];
        var count = 0;
        double whole = 0;
        for (var i = 0; i < active.Count; i++)
        {
            if (predictions[i] is { HasFigure: true } p)
            {
                var weight = active[i].Probability + 0.5 / active.Count;
                foreach (var k in Smear)
                {
                    at[count] = p.Mean + k * p.Sd;
                    points[count++] = (weight, p.Sd);
                    whole += weight;
                }
            }
        }
        Array.Sort(at, points, 0, count);
        var step = whole / (most + 1);
        var edges = new List<double>();
        double sum = 0;
        for (var k = 0; k < count; k++)
        {
            sum += points[k].Weight;
            if (sum >= step && (edges.Count == 0 || at[k] > edges[^1] + 0.4 * points[k].Sd))
            {
                edges.Add(at[k]);
                sum = 0;
            }
        }
        return [.. edges];
    }
}
