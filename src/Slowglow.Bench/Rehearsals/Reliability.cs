namespace Slowglow.Bench.Rehearsals;

/// <summary>Whether probabilities mean what they say.</summary>
/// <param name="Bins">From unlikely to certain.</param>
/// <param name="ExpectedError">Expected calibration error: mean over all statements of how far their bin's claim lies from its truth, 0 to 1.</param>
public sealed record Reliability(IReadOnlyList<ReliabilityBin> Bins, double ExpectedError)
{
    private static readonly double[] Edges = [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.85, 0.9, 0.95, 0.99, 1];

    public static Reliability Of(IReadOnlyList<Statement> statements)
    {
        var bins = Edges.Zip(Edges.Skip(1), (low, high) => Bin(statements, low, high)).ToList();
        var error = bins.Where(b => b.Statements > 0).Sum(b => b.Statements * Math.Abs(b.Claimed - b.Right));
        return new(bins, statements.Count == 0 ? double.NaN : error / statements.Count);
    }

    private static ReliabilityBin Bin(IReadOnlyList<Statement> statements, double low, double high)
    {
        Statement[] within = [.. statements.Where(s => s.Probability >= low && (s.Probability < high || high == 1))];
        return within.Length == 0
            ? new(low, high, 0, double.NaN, double.NaN)
            : new(low, high, within.Length, within.Average(s => s.Probability), within.Average(s => s.IsRight ? 1.0 : 0.0));
    }
}
