using Slowglow.Diagnosis.Complaints;
using Slowglow.Diagnosis.Doubts;
using Slowglow.Diagnosis.Likelihood;
using Slowglow.Diagnosis.Looks;

namespace Slowglow.Diagnosis.Hypotheses;

/// <summary>Probabilities after all the evidence, with what they rest on.</summary>
/// <param name="Of">By hypothesis; number 0 is the healthy unit. With <paramref name="None"/> they sum to one.</param>
/// <param name="None">None of these.</param>
/// <param name="Fits">By hypothesis; null for those ruled out early.</param>
/// <param name="Readings">The readings in the order they were weighed.</param>
/// <param name="Heard">What was understood of the complaint.</param>
/// <param name="Complaint">How likely stories make it.</param>
/// <param name="Sifted">All that was read, sorted.</param>
/// <param name="Looks">How likely stories make what was seen.</param>
internal sealed record Posterior(
    double[] Of,
    double None,
    Fit?[] Fits,
    ReadingSet Readings,
    IReadOnlyList<Heard> Heard,
    ComplaintEvidence Complaint,
    Sifted Sifted,
    LookEvidence Looks
)
{
    /// <summary>What of the complaint was not understood, as said.</summary>
    public IReadOnlyList<string> PassedOver { get; init; } = [];

    /// <summary>Hypotheses likelier than a bound, likeliest first.</summary>
    public int[] Above(double bound, int most) =>
        [.. Enumerable.Range(0, Of.Length).Where(h => Of[h] > bound).OrderByDescending(h => Of[h]).Take(most)];
}
