namespace Slowglow.Workshop.Orders;

/// <summary>What a line of an order really cost in the shop's currency, its share of the freight in it.</summary>
/// <param name="Landed">The whole line.</param>
/// <param name="LandedEach">A piece, not rounded.</param>
public sealed record OrderedLine(OrderLine Line, decimal Landed, decimal LandedEach);
