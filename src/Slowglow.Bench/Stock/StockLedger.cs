using Microsoft.EntityFrameworkCore;
using Slowglow.Storage;
using Slowglow.Workshop;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Orders;
using Slowglow.Workshop.Stock;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Stock;

/// <summary>Keeps bins and timelines in step: what an entry fits out of a bin leaves it, and comes back when the entry is struck out.</summary>
internal static class StockLedger
{
    /// <summary>What keeps the entry from being stored; empty when nothing does. Stored with the entry.</summary>
    public static async Task<IReadOnlyList<Objection>> MoveAsync(
        ShopDatabase database,
        Job job,
        TimelineEntry entry,
        CancellationToken cancel
    ) =>
        entry switch
        {
            PartFitted { What: { Stock: not null } part } => await TakeAsync(database, part, entry, cancel),
            EntryStruck { What: var strike } when Struck(job, strike) is { } part => await PutBackAsync(
                database,
                part,
                entry,
                strike,
                cancel
            ),
            _ => [],
        };

    private static FittedPart? Struck(Job job, Strike strike) =>
        job.Timeline.OfType<PartFitted>().FirstOrDefault(f => f.Sequence == strike.Entry && f.What.Stock is not null)?.What;

    private static async Task<IReadOnlyList<Objection>> TakeAsync(
        ShopDatabase database,
        FittedPart part,
        TimelineEntry entry,
        CancellationToken cancel
    )
    {
        var item = await database.Stock.SingleOrDefaultAsync(i => i.Id == part.Stock, cancel);
        var wrong = StockRules.LookTake(item, part.Quantity);
        if (wrong.Count == 0)
        {
            item!.Move(-part.Quantity, null, entry.At, entry.JobNumber, entry.By, "fitted");
        }

        return wrong;
    }

    private static async Task<IReadOnlyList<Objection>> PutBackAsync(
        ShopDatabase database,
        FittedPart part,
        TimelineEntry entry,
        Strike strike,
        CancellationToken cancel
    )
    {
        var item = await database.Stock.SingleOrDefaultAsync(i => i.Id == part.Stock, cancel);
        item?.Move(part.Quantity, part.CostEach, entry.At, entry.JobNumber, entry.By, $"put back: {strike.Reason}");
        return [];
    }
}
