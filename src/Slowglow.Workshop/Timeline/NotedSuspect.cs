namespace Slowglow.Workshop.Timeline;

/// <param name="Words">"R10 drifted up".</param>
/// <param name="Probability">0 to 1.</param>
public sealed record NotedSuspect(string Words, double Probability);
