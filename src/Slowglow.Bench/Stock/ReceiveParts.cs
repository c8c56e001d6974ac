using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Workshop.Stock;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Stock;

/// <summary>
/// Takes down what came of a job's order. What the shop has a bin for goes through that bin, at what it cost with freight: one entry on the timeline and
/// one move of each bin, or nothing.
/// </summary>
public sealed class ReceiveParts(JobLedger ledger)
{
    /// <param name="order">Sequence of the order.</param>
    /// <param name="pieces">In the order of its lines.</param>
    public Task<Parsed<TimelineEntry>> RunAsync(
        int jobNumber,
        int order,
        IReadOnlyList<int> pieces,
        string? by = null,
        CancellationToken cancel = default
    ) =>
        ledger.WriteAsync(
            jobNumber,
            by,
            async job => job.Ask(new PartsArrived { What = new(order, pieces, await BinsAsync(job, order)) }),
            cancel
        );

    /// <summary>The bin of each line; null where the shop has none, or when there is none for any of them.</summary>
    private static async Task<IReadOnlyList<int?>?> BinsAsync(JobAtHand job, int order)
    {
        if (job.Dealings.Orders.FirstOrDefault(o => o.Sequence == order) is not { } open)
        {
            return null;
        }

        var stock = await job.Database.Stock.AsNoTracking().OrderBy(i => i.Id).ToListAsync(job.Cancel);
        var bins = open.Order.Lines.Select(l => stock.FirstOrDefault(i => StockedPart.IsIt(l.Part, i.Part))?.Id).ToList();
        return bins.Any(b => b is not null) ? bins : null;
    }
}
