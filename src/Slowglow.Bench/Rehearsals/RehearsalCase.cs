namespace Slowglow.Bench.Rehearsals;

/// <summary>How one hidden unit went.</summary>
/// <param name="Rank">Place of the suspect (or inseparable group) that holds a true part, from 1; <see cref="int.MaxValue"/> when none does.</param>
/// <param name="First">Designator of the first suspect; empty when nobody is suspected.</param>
/// <param name="FirstProbability">Claimed for it at the end, 0 to 1.</param>
/// <param name="FirstGroup">Parts in its group.</param>
/// <param name="FirstIsPair">The first suspect is two faults at once.</param>
/// <param name="IsCertain">The first suspect reached the certainty asked for.</param>
/// <param name="Minutes">On the bench.</param>
/// <param name="SlowestMilliseconds">Longest wait for an answer after a reading.</param>
/// <param name="Statements">One before the first reading, and one after each.</param>
public sealed record RehearsalCase(
    HiddenFault Hidden,
    string Complaint,
    int Rank,
    string First,
    double FirstProbability,
    int FirstGroup,
    bool FirstIsPair,
    double NoneOfThese,
    bool IsCertain,
    double Minutes,
    double SlowestMilliseconds,
    IReadOnlyList<RehearsalStep> Steps,
    IReadOnlyList<Statement> Statements
)
{
    /// <summary>More than 70 % for one part that is not at fault.</summary>
    public bool IsOverclaimed => FirstProbability > 0.7 && Rank != 1 && !FirstIsPair;
}
