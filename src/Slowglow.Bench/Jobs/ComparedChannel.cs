using Slowglow.Bench.Questions;

namespace Slowglow.Bench.Jobs;

/// <summary>A channel, healthy and with a fault.</summary>
/// <param name="Sentences">The difference in plain words; one sentence when nothing differs.</param>
public sealed record ComparedChannel(ChannelLevels Healthy, ChannelLevels Actual, IReadOnlyList<string> Sentences);
