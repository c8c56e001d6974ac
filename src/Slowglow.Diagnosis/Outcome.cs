namespace Slowglow.Diagnosis;

/// <summary>What one outcome of a reading would mean.</summary>
/// <param name="Range">"below 40 V", "about 180 V", "overload".</param>
/// <param name="Low">Base units; negative infinity when open below.</param>
/// <param name="High">Base units; positive infinity when open above.</param>
/// <param name="Probability">How likely this outcome is now, 0 to 1.</param>
/// <param name="Means">A sentence: "R5 has drifted up", "R5 is fine; V1 or R4".</param>
public sealed record Outcome(string Range, double Low, double High, double Probability, string Means);
