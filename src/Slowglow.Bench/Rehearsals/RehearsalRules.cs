namespace Slowglow.Bench.Rehearsals;

/// <summary>When a case ends.</summary>
public sealed record RehearsalRules
{
    /// <summary>Probability of the first suspect at which the part is replaced, 0 to 1.</summary>
    public double Certainty { get; init; } = 0.9;

    /// <summary>Readings after which one gives up.</summary>
    public int MostReadings { get; init; } = 20;
}
