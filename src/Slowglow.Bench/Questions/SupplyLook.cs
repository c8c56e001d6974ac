namespace Slowglow.Bench.Questions;

/// <summary>What the supply side of a unit is made of.</summary>
/// <param name="Refusal">What cannot be advised on, in sentences; null for a unit with a mains transformer.</param>
/// <param name="Transformers">Designators of those fed from the mains.</param>
/// <param name="Parts">Designators of what dies in a supply: transformers, fuses, rectifiers, regulators, reservoirs.</param>
public sealed record SupplyLook(string? Refusal, IReadOnlyList<string> Transformers, IReadOnlyList<string> Parts);
