using Slowglow.Workshop.Orders;

namespace Slowglow.Workshop.Jobs;

/// <summary>An order with what has come of it.</summary>
/// <param name="Sequence">Its entry in the timeline.</param>
/// <param name="Came">Pieces that came, by line.</param>
/// <param name="Promised">The last day that the supplier named.</param>
/// <param name="Heard">When it was ordered, chased, or something of it came: the latest of these.</param>
public sealed record OpenOrder(
    int Sequence,
    PartsOrder Order,
    IReadOnlyList<int> Came,
    DateOnly? Promised,
    string Tracking,
    DateTimeOffset Heard
)
{
    public bool IsComplete => Order.Lines.Zip(Came).All(p => p.Second >= p.First.Quantity);

    /// <summary>True when it should be here and is not.</summary>
    public bool IsLate(DateOnly today) => !IsComplete && Promised < today;
}
