namespace Slowglow.Power.PowerUp;

/// <summary>A way for a step to go wrong, and who is behind it.</summary>
/// <param name="Looks">"lamp bright, HT1 dead".</param>
/// <param name="Suspects">Faults whose world looks so, in the trade's words.</param>
public sealed record PowerSign(string Looks, IReadOnlyList<string> Suspects);
