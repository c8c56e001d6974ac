namespace Slowglow.Workshop.Orders;

/// <summary>Pieces of a job's order that went into a bin of the stock.</summary>
/// <param name="Bin">The item of the stock.</param>
/// <param name="Pieces">Above 0.</param>
/// <param name="CostEach">With freight, in the shop's currency.</param>
public sealed record BinnedPieces(int Bin, int Pieces, decimal CostEach);
