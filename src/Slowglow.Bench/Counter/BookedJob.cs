namespace Slowglow.Bench.Counter;

/// <param name="Number">As on the label.</param>
public sealed record BookedJob(int Number);
