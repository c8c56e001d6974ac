using Slowglow.Diagnosis.Likelihood;
using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Next;

/// <summary>Chance of every outcome of a reading under every story that counts; the last row is none-of-these.</summary>
internal sealed class OutcomeTable
{
    /// <summary>Coarser than what a proposal is judged by: two readings ahead need no more.</summary>
    private const int Edges = 9;

    private readonly double[][] rows;

    private OutcomeTable(double[][] rows) => this.rows = rows;

    public int Bins => rows[0].Length;

    public double At(int row, int bin) => rows[row][bin];

    /// <param name="predictions">One for each of <paramref name="active"/>; null where a story has no answer, which then foresees all alike.</param>
    public static OutcomeTable Of(IReadOnlyList<Prediction?> predictions, IReadOnlyList<Active> active, Broad none, Probe probe)
    {
        var edges = Predictive.EdgesOf(predictions, active, Edges);
        var rows = new double[active.Count + 1][];
        for (var i = 0; i <= active.Count; i++)
        {
            rows[i] = new double[edges.Length + 2];
            if (i < active.Count && predictions[i] is { } prediction)
            {
                Predictive.Fill(rows[i], prediction, edges, none, probe);
            }
            else
            {
                Predictive.FillBroad(rows[i], edges, none, Predictive.OpenUnknown(probe, none));
            }
        }
        return new(rows);
    }
}
