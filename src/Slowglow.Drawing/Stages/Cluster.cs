using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Stages;

/// <summary>A stage: an active section and what hangs on it.</summary>
/// <param name="Path">Index of the signal path that it stands on.</param>
/// <param name="Symbols">In the order of the signal.</param>
internal sealed record Cluster(int Path, IReadOnlyList<Symbol> Symbols)
{
    public double Weight => Symbols.Sum(WeightOf);

    /// <summary>How much room a symbol and its wires take, roughly, in resistors.</summary>
    private static double WeightOf(Symbol symbol) =>
        symbol switch
        {
            WireSymbol => 0.6,
            { IsActive: true } => 3,
            TransformerSymbol => 4,
            { Pins.Count: > 2 } => 1.6,
            _ => 1,
        };
}
