namespace Slowglow.Drawing.Symbols;

/// <summary>One stroke of a symbol, in grid units about the symbol's origin.</summary>
internal abstract record Stroke;
