using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Workshop.Stock;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Stock;

/// <summary>Fits pieces out of a bin into a job: one entry on its timeline and one move of the bin, or neither. Striking the entry out puts them back.</summary>
public sealed class TakeFromStock(JobLedger ledger)
{
    public Task<Parsed<TimelineEntry>> RunAsync(
        int jobNumber,
        int item,
        int pieces,
        string? by = null,
        CancellationToken cancel = default
    ) =>
        ledger.WriteAsync(
            jobNumber,
            by,
            async job =>
            {
                var known = await job.Database.Stock.SingleOrDefaultAsync(i => i.Id == item, job.Cancel);
                var wrong = StockRules.LookTake(known, pieces);
                if (known is null || wrong.Count > 0)
                {
                    return Draft.Refused(wrong);
                }

                var price = job.Rules.Markup.Price(known.CostEach, job.Rules.Currency);
                return new(
                    new PartFitted { What = new(known.Part, pieces, known.CostEach, price, $"bin {known.Bin}", known.Id) },
                    []
                );
            },
            cancel
        );
}
