namespace Slowglow.Diagnosis.Suspects;

/// <summary>A part to replace, or parts that cannot be told apart, with the stories that end there.</summary>
/// <param name="Parts">Designators, likeliest first.</param>
/// <param name="Hypotheses">Indices, likeliest first.</param>
/// <param name="Probability">Of all of them, 0 to 1.</param>
internal sealed record Cure(IReadOnlyList<string> Parts, IReadOnlyList<int> Hypotheses, double Probability)
{
    public string Part => Parts[0];

    /// <summary>Both parts are to be replaced; otherwise one of them.</summary>
    public bool IsPair { get; init; }

    /// <summary>"R5", "R5 or R6", "R5, R6 or C2"; "R5 and C2 together" for a pair.</summary>
    public string Name =>
        Parts.Count == 1 ? Parts[0]
        : IsPair ? $"{Parts[0]} and {Parts[1]} together"
        : $"{string.Join(", ", Parts.Take(Parts.Count - 1))} or {Parts[^1]}";

    public Cure With(Cure other) =>
        new([.. Parts, .. other.Parts], [.. Hypotheses, .. other.Hypotheses], Probability + other.Probability);
}
