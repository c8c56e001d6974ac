namespace Slowglow.Workshop.Stock;

/// <summary>Pieces that came into a bin or went out of it. Never changed.</summary>
public sealed class StockMove
{
    public int ItemId { get; init; }

    /// <summary>Counts from 1 within the item.</summary>
    public required int Sequence { get; init; }

    /// <summary>Above 0: came in. Below 0: went out.</summary>
    public required int Pieces { get; init; }

    /// <summary>In the bin afterwards.</summary>
    public required int Left { get; init; }

    public required DateTimeOffset At { get; init; }

    /// <summary>The job that took them or put them back; null for deliveries and counts.</summary>
    public int? JobNumber { get; init; }

    public string? By { get; init; }

    public required string Why { get; init; }
}
