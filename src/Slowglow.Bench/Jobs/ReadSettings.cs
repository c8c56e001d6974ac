using Microsoft.EntityFrameworkCore;
using Slowglow.Storage;
using Slowglow.Workshop.Words;

namespace Slowglow.Bench.Jobs;

/// <summary>What the shop has settled.</summary>
public sealed class ReadSettings(IDbContextFactory<ShopDatabase> shop)
{
    public async Task<ShopSettings> RunAsync(CancellationToken cancel = default)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        return await database.Settings.AsNoTracking().SingleOrDefaultAsync(cancel) ?? new ShopSettings();
    }
}
