namespace Slowglow.Bench.Questions;

/// <summary>Signal at a net: volts rms at 1 kHz. Gain is relative to the net before it in the list; NaN for the first.</summary>
public sealed record StageLevel(string Where, double Volts, double Gain);
