using Microsoft.EntityFrameworkCore;
using Slowglow.Storage;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Bench.Jobs;

/// <summary>The job book.</summary>
public sealed class ListJobs(IDbContextFactory<ShopDatabase> shop)
{
    /// <summary>All jobs, lowest number first.</summary>
    public async Task<IReadOnlyList<JobLine>> RunAsync(CancellationToken cancel = default)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var jobs = await database
            .Jobs.AsNoTracking()
            .Include(j => j.Customer)
            .Include(j => j.Timeline)
            .OrderBy(j => j.Number)
            .AsSplitQuery()
            .ToListAsync(cancel);
        return [.. jobs.Select(Line)];
    }

    private static JobLine Line(Job job)
    {
        var standing = job.Standing();
        return new(
            job.Number,
            job.Unit.Title,
            job.Customer.Name,
            standing.Complaint,
            JobStateWords.Say(standing.State),
            job.BookedIn,
            job.Promised,
            standing.Readings.Count
        );
    }
}
