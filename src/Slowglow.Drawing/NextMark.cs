namespace Slowglow.Drawing;

/// <summary>The reading to take next, ringed on the drawing.</summary>
/// <param name="Nets">Canonical nets under the leads, red first; chassis need not be named.</param>
/// <param name="Range">Meter range to set, in words: "1000 V dc".</param>
/// <param name="Caution">What there can kill, in the trade's words: "live HT"; null where nothing does.</param>
public sealed record NextMark(IReadOnlyList<string> Nets, string Range, string? Caution);
