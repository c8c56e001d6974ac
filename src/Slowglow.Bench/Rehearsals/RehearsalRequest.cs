namespace Slowglow.Bench.Rehearsals;

/// <summary>What to rehearse.</summary>
public sealed record RehearsalRequest
{
    /// <summary>Units with one fault, at least 1.</summary>
    public int Cases { get; init; } = 60;

    /// <summary>Units with two faults.</summary>
    public int Doubles { get; init; }

    /// <summary>Units with a part of the wrong value.</summary>
    public int WrongValues { get; init; }

    /// <summary>Units with a solder bridge.</summary>
    public int Bridges { get; init; }

    public int Seed { get; init; } = 1;
    public Strategy By { get; init; }
    public FaultDraw Draw { get; init; }
    public RehearsalRules Rules { get; init; } = new();
}
