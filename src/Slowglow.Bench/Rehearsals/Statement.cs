namespace Slowglow.Bench.Rehearsals;

/// <summary>What the program said of its first suspect at one moment, and whether that was so.</summary>
/// <param name="Probability">Claimed, 0 to 1.</param>
/// <param name="IsRight">The true part, or an inseparable group that holds it.</param>
/// <param name="Readings">Readings tried by then.</param>
/// <param name="Minutes">Spent by then.</param>
public readonly record struct Statement(double Probability, bool IsRight, int Readings, double Minutes);
