namespace Slowglow.Workshop.Timeline;

/// <param name="Readings">How many readings they were weighed from.</param>
/// <param name="Suspects">The likeliest first.</param>
/// <param name="Healthy">Chance that nothing is wrong, 0 to 1.</param>
/// <param name="NoneOfThese">Chance that it is something else, 0 to 1.</param>
public sealed record NotedSuspects(int Readings, IReadOnlyList<NotedSuspect> Suspects, double Healthy, double NoneOfThese);
