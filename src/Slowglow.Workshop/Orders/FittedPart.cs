namespace Slowglow.Workshop.Orders;

/// <param name="Part">What it is, and where it went.</param>
/// <param name="Quantity">Pieces, above 0.</param>
/// <param name="CostEach">What a piece cost the shop, at least 0.</param>
/// <param name="PriceEach">What it is charged at, at least 0.</param>
/// <param name="Stock">The item of the stock that it came out of; null when it came from elsewhere.</param>
/// <param name="From">Bin of the stock, or the supplier; may be empty.</param>
public sealed record FittedPart(string Part, int Quantity, decimal CostEach, decimal PriceEach, string From, int? Stock = null);
