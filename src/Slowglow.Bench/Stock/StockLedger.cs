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
        string currency,
        CancellationToken cancel
    ) =>
        entry switch
        {
            PartsArrived { What: { Bins: not null } delivery } => await BringAsync(
                database,
                JobDealings.After(job.Timeline).BinnedBy(delivery, currency),
                entry,
                cancel
            ),
            EntryStruck { What: var strike } when Delivered(job, strike) is { } delivery => await SendBackAsync(
                database,
                JobDealings.After(job.Timeline).BinnedBy(delivery, currency),
                entry,
                strike,
                cancel
            ),
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

    private static Delivery? Delivered(Job job, Strike strike) =>
        job.Timeline.OfType<PartsArrived>().FirstOrDefault(f => f.Sequence == strike.Entry && f.What.Bins is not null)?.What;

    private static async Task<IReadOnlyList<Objection>> BringAsync(
        ShopDatabase database,
        IReadOnlyList<BinnedPieces> pieces,
        TimelineEntry entry,
        CancellationToken cancel
    )
    {
        foreach (var piece in pieces)
        {
            var item = await database.Stock.SingleOrDefaultAsync(i => i.Id == piece.Bin, cancel);
            item?.Move(piece.Pieces, piece.CostEach, entry.At, entry.JobNumber, entry.By, "came for the job");
        }

        return [];
    }

    private static async Task<IReadOnlyList<Objection>> SendBackAsync(
        ShopDatabase database,
        IReadOnlyList<BinnedPieces> pieces,
        TimelineEntry entry,
        Strike strike,
        CancellationToken cancel
    )
    {
        List<Objection> wrong = [];
        foreach (var piece in pieces)
        {
            var item = await database.Stock.SingleOrDefaultAsync(i => i.Id == piece.Bin, cancel);
            wrong.AddRange(StockRules.LookTake(item, piece.Pieces));
            if (wrong.Count == 0)
            {
                item!.Move(-piece.Pieces, null, entry.At, entry.JobNumber, entry.By, $"did not come: {strike.Reason}");
            }
        }

        return wrong;
    }

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
