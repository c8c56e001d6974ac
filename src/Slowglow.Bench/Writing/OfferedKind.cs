namespace Slowglow.Bench.Writing;

/// <summary>A kind of part that may be typed.</summary>
/// <param name="Words">First words that settle the kind.</param>
/// <param name="Letters">Designator letters.</param>
/// <param name="Devices">Kinds of type numbers, as <see cref="OfferedDevice.Kind"/> has them; empty where it has values instead.</param>
public sealed record OfferedKind(
    string Name,
    IReadOnlyList<string> Words,
    IReadOnlyList<string> Letters,
    IReadOnlyList<string> Devices
);
