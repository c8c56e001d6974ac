using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Storage;
using Slowglow.Workshop.LookingBack;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.LookingBack;

/// <summary>What the shop earned and where the weeks went, over so many months up to now.</summary>
public sealed class ReadLookBack(IDbContextFactory<ShopDatabase> shop, TimeProvider clock)
{
    private const int AtOnce = 200;

    /// <param name="months">1 to 60, the present one included.</param>
    public async Task<LookBack> RunAsync(int months, CancellationToken cancel = default)
    {
        var today = ShopDay.Today(clock);
        var first = new DateOnly(today.Year, today.Month, 1).AddMonths(1 - Math.Clamp(months, 1, 60));
        await using var database = await shop.CreateDbContextAsync(cancel);
        // A day of grace for the shop's own time of day; the exact day is asked of each job.
        var since = ShopDay.Noon(first).AddDays(-2);
        var numbers = await database
            .Timeline.OfType<HandedOver>()
            .Where(e => e.At >= since)
            .Select(e => e.JobNumber)
            .Distinct()
            .ToListAsync(cancel);
        List<ClosedJob> closed = [];
        foreach (var some in numbers.Chunk(AtOnce))
        {
            closed.AddRange(await ClosedAsync(database, some, cancel));
        }

        return LookBack.Over([.. closed.Where(j => j.Day >= first)], first, today);
    }

    private async Task<IEnumerable<ClosedJob>> ClosedAsync(ShopDatabase database, int[] numbers, CancellationToken cancel)
    {
        var entries = await database
            .Timeline.AsNoTracking()
            .Where(e => numbers.Contains(e.JobNumber))
            .OrderBy(e => e.Sequence)
            .ToListAsync(cancel);
        var papers = (
            await database.Papers.AsNoTracking().Where(p => numbers.Contains(p.JobNumber)).ToListAsync(cancel)
        ).ToLookup(p => p.JobNumber, p => p.Paper);
        var promised = await database
            .Board.AsNoTracking()
            .Where(c => numbers.Contains(c.JobNumber))
            .ToDictionaryAsync(c => c.JobNumber, c => c.Promised, cancel);
        return entries
            .GroupBy(e => e.JobNumber)
            .Select(g =>
                ClosedJob.Of(g.Key, g, [.. papers[g.Key]], promised.GetValueOrDefault(g.Key), at => ShopDay.Of(at, clock))
            )
            .OfType<ClosedJob>();
    }
}
