namespace Slowglow.Bench.Jobs;

/// <summary>A name that a probe can be put on.</summary>
/// <param name="Detail">What it is: "anode of V1, also TOP".</param>
public sealed record PointName(string Name, string Detail);
