namespace Slowglow.Bench.Writing;

/// <summary>One difference between two versions of a sheet.</summary>
/// <param name="Where">A designator or a point.</param>
/// <param name="Before">Null for what was added.</param>
/// <param name="After">Null for what was taken out.</param>
public sealed record SheetChange(string Where, string? Before, string? After);
