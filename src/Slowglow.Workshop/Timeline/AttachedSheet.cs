namespace Slowglow.Workshop.Timeline;

/// <param name="Sheet">Number of the sheet in the shop's library.</param>
/// <param name="Follows">Number of the sheet that it took the place of; null where the job had none.</param>
public sealed record AttachedSheet(int Sheet, string Title, int? Follows = null);
