using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Stages;

/// <summary>A strip of the drawing: neighbouring stages, or the supply.</summary>
/// <param name="IsSupply">From the inlet to the last rail.</param>
/// <param name="Symbols">What is drawn in it.</param>
internal sealed record Band(bool IsSupply, IReadOnlyList<Symbol> Symbols);
