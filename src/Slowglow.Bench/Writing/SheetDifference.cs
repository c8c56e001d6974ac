namespace Slowglow.Bench.Writing;

/// <summary>What differs between two versions of a sheet.</summary>
/// <param name="Parts">Parts added, taken out, changed or wired otherwise.</param>
/// <param name="Points">Points whose figure left the band that it had before.</param>
/// <param name="Unsolved">Why the figures could not be compared; null when they were.</param>
public sealed record SheetDifference(IReadOnlyList<SheetChange> Parts, IReadOnlyList<SheetChange> Points, string? Unsolved);
