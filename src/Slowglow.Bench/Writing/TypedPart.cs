namespace Slowglow.Bench.Writing;

/// <summary>A part that can be pointed at while typing.</summary>
/// <param name="What">"12AX7", "100k 1 W".</param>
public sealed record TypedPart(string Name, string What, IReadOnlyList<TypedPin> Pins);
