namespace Slowglow.Bench.Writing;

/// <summary>A type number that may be typed.</summary>
/// <param name="Pins">"1 a, 2 g, 3 k".</param>
public sealed record OfferedDevice(string Type, IReadOnlyList<string> AlsoCalled, string Kind, string Pins);
