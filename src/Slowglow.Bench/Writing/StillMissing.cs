namespace Slowglow.Bench.Writing;

/// <summary>Something that a diagnosis needs of a sheet.</summary>
/// <param name="Text">What, in the trade's words.</param>
/// <param name="Remedy">What to write; empty when it is there.</param>
public sealed record StillMissing(string Text, bool IsThere, string Remedy);
