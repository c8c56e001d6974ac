namespace Slowglow.Bench.Jobs;

/// <summary>One way on for a line that is being typed.</summary>
/// <param name="Line">The whole line with the suggestion taken.</param>
/// <param name="Shown">The part that is new.</param>
/// <param name="Detail">What it is, in a few words.</param>
public sealed record Suggestion(string Line, string Shown, string Detail);
