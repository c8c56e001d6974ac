using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Formations;

/// <summary>Two alike that share a tail: a long-tailed pair, a differential stage.</summary>
/// <param name="One">The active part, or the resistor between it and the shared net.</param>
/// <param name="Hang">True when the tail is above them.</param>
/// <param name="Tail">What feeds both; null when nothing stands there.</param>
/// <param name="Wire">The wire that joins them, where the sheet has one.</param>
internal sealed record Twins(Upright One, Upright Other, bool Hang, Upright? Tail, WireSymbol? Wire);
