namespace Slowglow.Workshop.Timeline;

/// <param name="Sheet">Number of the sheet in the shop's library.</param>
public sealed record AttachedSheet(int Sheet, string Title);
