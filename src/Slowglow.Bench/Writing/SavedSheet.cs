namespace Slowglow.Bench.Writing;

/// <param name="Sheet">Number of the sheet now beside the job.</param>
/// <param name="IsNew">False when the very same text was there already.</param>
public sealed record SavedSheet(int Sheet, bool IsNew);
