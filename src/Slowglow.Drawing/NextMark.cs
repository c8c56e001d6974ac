namespace Slowglow.Drawing;

/// <summary>The reading to take next, ringed on the drawing.</summary>
/// <param name="Nets">Canonical nets under the leads, red first; chassis need not be named.</param>
/// <param name="Range">Meter range to set, in words: "1000 V dc".</param>
/// <param name="IsLiveHighTension">True when the point carries volts that can kill.</param>
public sealed record NextMark(IReadOnlyList<string> Nets, string Range, bool IsLiveHighTension);
