namespace Slowglow.Workshop.Timeline;

/// <param name="To">Who took it.</param>
/// <param name="With">What went with it.</param>
/// <param name="WarrantyUntil">Last day of the warranty on the work; null when there is none.</param>
public sealed record Handover(string To, string With, DateOnly? WarrantyUntil);
