using Slowglow.Diagnosis.Complaints;
using Slowglow.Diagnosis.Likelihood;

namespace Slowglow.Diagnosis.Hypotheses;

/// <summary>Probabilities after all the evidence, with what they rest on.</summary>
/// <param name="Of">By hypothesis; number 0 is the healthy unit. With <paramref name="None"/> they sum to one.</param>
/// <param name="None">None of these.</param>
/// <param name="Fits">By hypothesis; null for those ruled out early.</param>
/// <param name="Readings">The readings in the order they were weighed.</param>
/// <param name="Heard">What was understood of the complaint.</param>
internal sealed record Posterior(
    double[] Of,
    double None,
    Fit?[] Fits,
    ReadingSet Readings,
    IReadOnlyList<Heard> Heard,
    ComplaintEvidence Complaint
)
{
    /// <summary>Hypotheses likelier than a bound, likeliest first.</summary>
    public int[] Above(double bound, int most) =>
        [.. Enumerable.Range(0, Of.Length).Where(h => Of[h] > bound).OrderByDescending(h => Of[h]).Take(most)];
}
