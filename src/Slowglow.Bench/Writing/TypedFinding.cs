namespace Slowglow.Bench.Writing;

/// <summary>A finding as the place where one types shows it.</summary>
/// <param name="Severity">"error", "warning" or "note".</param>
/// <param name="Line">From 1; 0 = it stands nowhere in particular.</param>
/// <param name="Column">From 1.</param>
/// <param name="Instead">Words that could stand in the place of the word there, the likeliest first.</param>
public sealed record TypedFinding(
    string Severity,
    int Line,
    int Column,
    string Text,
    string Remedy,
    IReadOnlyList<string> Instead
);
