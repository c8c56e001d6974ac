using Slowglow.Circuits;

namespace Slowglow.Bench.Jobs;

/// <summary>Levels of every channel with a fault, beside those of a healthy unit.</summary>
public sealed record LevelComparison(Fault Fault, IReadOnlyList<ComparedChannel> Channels);
