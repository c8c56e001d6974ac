using Microsoft.EntityFrameworkCore;
using Slowglow.Storage;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Jobs;

/// <summary>Adds entries to timelines. An entry is on the disk before anyone is told of it.</summary>
public sealed class TimelineWriter(IDbContextFactory<ShopDatabase> shop, TimeProvider clock, JobNews news)
{
    private const int Attempts = 5;

    /// <summary>Stores what <paramref name="entry"/> makes of job, sequence and time. Two benches may write at once: the later one takes the next sequence.</summary>
    internal async Task<TimelineEntry> AppendAsync(
        int jobNumber,
        Func<int, DateTimeOffset, TimelineEntry> entry,
        CancellationToken cancel
    )
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                var stored = await StoreAsync(jobNumber, entry, cancel);
                news.Tell(jobNumber);
                return stored;
            }
            catch (DbUpdateException) when (attempt < Attempts)
            {
                await Task.Delay(TimeSpan.FromMilliseconds(10 * attempt), clock, cancel);
            }
        }
    }

    private async Task<TimelineEntry> StoreAsync(
        int jobNumber,
        Func<int, DateTimeOffset, TimelineEntry> entry,
        CancellationToken cancel
    )
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var last = await database.Timeline.Where(e => e.JobNumber == jobNumber).MaxAsync(e => (int?)e.Sequence, cancel) ?? 0;
        var made = entry(last + 1, clock.GetUtcNow());
        database.Timeline.Add(made);
        await database.SaveChangesAsync(cancel);
        return made;
    }
}
