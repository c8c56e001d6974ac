namespace Slowglow.Bench.Rehearsals;

/// <summary>When a case ends.</summary>
public sealed record RehearsalRules
{
    /// <summary>Probability of the first suspect at which the cure counts as found, 0 to 1: readings and minutes are counted to there.</summary>
    public double Certainty { get; init; } = 0.9;

    /// <summary>Probability up to which one goes on measuring to prove it, 0 to 1: as far as the program itself proposes readings.</summary>
    public double Proof { get; init; } = 0.98;

    /// <summary>Readings after which one gives up.</summary>
    public int MostReadings { get; init; } = 20;
}
