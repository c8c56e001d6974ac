namespace Slowglow.Bench.Rehearsals;

/// <summary>How one hidden unit went.</summary>
/// <param name="Rank">Place of the suspect (or inseparable group) that holds a true part, from 1; <see cref="int.MaxValue"/> when none does.</param>
/// <param name="First">Designator of the first suspect; empty when nobody is suspected.</param>
/// <param name="FirstProbability">Claimed for it at the end, 0 to 1.</param>
/// <param name="FirstGroup">Parts in its group.</param>
/// <param name="FirstIsPair">The first suspect is two faults at once.</param>
/// <param name="Certainty">Asked for, 0 to 1.</param>
/// <param name="Minutes">On the bench, to the end.</param>
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
    double Certainty,
    double Minutes,
    double SlowestMilliseconds,
    IReadOnlyList<RehearsalStep> Steps,
    IReadOnlyList<Statement> Statements
)
{
    /// <summary>Where the first suspect reached the certainty asked for; null when it never did.</summary>
    public Statement? Reached { get; } = At(Statements, Certainty);

    public bool IsCertain => Reached is not null;

    private static Statement? At(IReadOnlyList<Statement> statements, double certainty)
    {
        var reached = statements.Where(s => s.Probability >= certainty).Take(1).ToList();
        return reached.Count > 0 ? reached[0] : null;
    }

    /// <summary>At the end more than 70 % for one part that is not at fault.</summary>
    public bool IsOverclaimed => FirstProbability > 0.7 && Rank != 1 && !FirstIsPair;
}
