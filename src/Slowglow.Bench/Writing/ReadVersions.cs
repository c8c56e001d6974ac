using Microsoft.EntityFrameworkCore;
using Slowglow.Sheets;
using Slowglow.Storage;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Writing;

/// <summary>Every text that a job's sheet has had, the oldest first.</summary>
public sealed class ReadVersions(IDbContextFactory<ShopDatabase> shop)
{
    /// <summary>Value null, with a finding, when there is no such job.</summary>
    public async Task<Parsed<JobSheet>> RunAsync(int number, CancellationToken cancel = default)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var job = await database
            .Jobs.AsNoTracking()
            .Include(j => j.Sheet)
            .Include(j => j.Timeline)
            .SingleOrDefaultAsync(j => j.Number == number, cancel);
        return job is null
            ? new(null, Jobs.Said.NoJob(number))
            : new(new(number, job.Unit.Title, await VersionsAsync(database, job, cancel)), []);
    }

    private static async Task<IReadOnlyList<SheetVersion>> VersionsAsync(ShopDatabase database, Job job, CancellationToken cancel)
    {
        var laid = job.Timeline.OrderBy(e => e.Sequence).OfType<SheetAttached>().ToList();
        List<(int Sheet, DateTimeOffset? At)> order = [.. laid.Select(e => (e.What.Sheet, (DateTimeOffset?)e.At))];
        if ((laid.Count == 0 ? job.Sheet?.Id : laid[0].What.Follows) is { } first)
        {
            order.Insert(0, (first, null));
        }

        var ids = order.Select(o => o.Sheet).Distinct().ToList();
        var texts = await database.Sheets.AsNoTracking().Where(s => ids.Contains(s.Id)).ToDictionaryAsync(s => s.Id, cancel);
        return
        [
            .. order
                .Where(o => texts.ContainsKey(o.Sheet))
                .Select(
                    (o, i) =>
                        new SheetVersion(
                            o.Sheet,
                            i + 1,
                            texts[o.Sheet].Title,
                            texts[o.Sheet].Text,
                            o.At ?? texts[o.Sheet].AddedAt
                        )
                ),
        ];
    }
}
