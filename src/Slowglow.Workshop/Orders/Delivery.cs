namespace Slowglow.Workshop.Orders;

/// <param name="Order">Sequence of the order in the timeline.</param>
/// <param name="Pieces">Pieces that came, in the order of its lines; at least 0.</param>
/// <param name="Bins">Item of the stock that each line went into, null for a line that went to the job; null when all did.</param>
public sealed record Delivery(int Order, IReadOnlyList<int> Pieces, IReadOnlyList<int?>? Bins = null);
