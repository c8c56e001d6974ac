namespace Slowglow.Workshop.Orders;

/// <param name="Order">Sequence of the order in the timeline.</param>
/// <param name="Pieces">Pieces that came, in the order of its lines; at least 0.</param>
public sealed record Delivery(int Order, IReadOnlyList<int> Pieces);
