using Microsoft.EntityFrameworkCore;
using Slowglow.Storage;

namespace Slowglow.Bench.Writing;

/// <summary>The sheets that a new one can begin as.</summary>
public sealed class ListSheets(IDbContextFactory<ShopDatabase> shop)
{
    private const int Most = 200;

    /// <summary>The newest jobs with a sheet, one for each sheet.</summary>
    public async Task<IReadOnlyList<OtherSheet>> RunAsync(CancellationToken cancel = default)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var jobs = await database
            .Jobs.AsNoTracking()
            .Where(j => j.Sheet != null)
            .OrderByDescending(j => j.Number)
            .Take(Most)
            .Select(j => new
            {
                j.Number,
                j.Sheet!.Id,
                j.Sheet.Title,
            })
            .ToListAsync(cancel);
        return [.. jobs.DistinctBy(j => j.Id).Select(j => new OtherSheet(j.Number, j.Title))];
    }
}
