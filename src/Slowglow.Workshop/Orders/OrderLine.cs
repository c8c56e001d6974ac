namespace Slowglow.Workshop.Orders;

/// <summary>A part on an order.</summary>
/// <param name="Part">What it is, and for where: "47 uF 450 V axial, C1".</param>
/// <param name="Quantity">Pieces, above 0.</param>
/// <param name="UnitPrice">A piece, in the order's currency, at least 0.</param>
public sealed record OrderLine(string Part, int Quantity, decimal UnitPrice);
