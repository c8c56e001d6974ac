using Microsoft.EntityFrameworkCore;
using Slowglow.Storage;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Bench.Counter;

/// <summary>The board: every open job by what it waits for, oldest promise first.</summary>
public sealed class ReadBoard(IDbContextFactory<ShopDatabase> shop)
{
    /// <summary>Jobs without a promise come last, oldest first.</summary>
    public async Task<IReadOnlyList<BoardCard>> RunAsync(CancellationToken cancel = default)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        return await database
            .Board.AsNoTracking()
            .Where(c => c.WaitsFor != WaitsFor.Nothing)
            .OrderBy(c => c.Promised == null ? 1 : 0)
            .ThenBy(c => c.Promised)
            .ThenBy(c => c.JobNumber)
            .ToListAsync(cancel);
    }
}
