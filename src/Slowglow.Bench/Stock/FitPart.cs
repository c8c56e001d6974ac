using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Workshop.Orders;
using Slowglow.Workshop.Stock;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Stock;

/// <summary>Takes down a part that was fitted. Where this job's delivery of it went through a bin, it comes out of that bin.</summary>
public sealed class FitPart(JobLedger ledger)
{
    public Task<Parsed<TimelineEntry>> RunAsync(
        int jobNumber,
        FittedPart part,
        string? by = null,
        CancellationToken cancel = default
    ) =>
        ledger.WriteAsync(
            jobNumber,
            by,
            async job => job.Ask(new PartFitted { What = part with { Stock = part.Stock ?? await BinAsync(job, part) } }),
            cancel
        );

    /// <summary>Null when none of it came through a bin for this job, or all that came is fitted already.</summary>
    private static async Task<int?> BinAsync(JobAtHand job, FittedPart part)
    {
        var binned = job.Dealings.Binned(job.Rules.Currency);
        foreach (var bin in binned.Select(b => b.Bin).Distinct())
        {
            var item = await job.Database.Stock.AsNoTracking().SingleOrDefaultAsync(i => i.Id == bin, job.Cancel);
            var came = binned.Where(b => b.Bin == bin).Sum(b => b.Pieces);
            var taken = job.Dealings.Fitted.Where(f => f.Stock == bin).Sum(f => f.Quantity);
            if (item is not null && StockedPart.IsIt(part.Part, item.Part) && taken + part.Quantity <= came)
            {
                return bin;
            }
        }

        return null;
    }
}
