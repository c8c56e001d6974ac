namespace Slowglow.Bench.Sums;

/// <summary>What a sum comes to.</summary>
/// <param name="Working">How it was worked, line by line, with the figures put in.</param>
public sealed record SumAnswer(IReadOnlyList<SumLine> Lines, IReadOnlyList<string> Working)
{
    /// <summary>Drawn beside a valve stage, otherwise null.</summary>
    public LoadLine? LoadLine { get; init; }
}
