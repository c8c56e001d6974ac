namespace Slowglow.Bench.Questions;

/// <summary>Signal at a net. Gain is relative to the net before it in the list.</summary>
public sealed record StageLevel(string Where, double Volts, double Gain);
