namespace Slowglow.Bench.Questions;

/// <summary>The limiter lamp that a bench has.</summary>
/// <param name="Watts">Of all lamps side by side together; null = whichever suits.</param>
public sealed record LampAtHand(double? Watts);
