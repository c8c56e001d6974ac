using Microsoft.EntityFrameworkCore;
using Slowglow.Storage;
using Slowglow.Storage.Records;

namespace Slowglow.Bench.Photographs;

/// <summary>Fetches a photograph by the name that its entry gives.</summary>
public sealed class ReadPhoto(IDbContextFactory<ShopDatabase> shop)
{
    /// <summary>Null when the shop has none of that name.</summary>
    public async Task<KeptPhoto?> RunAsync(string file, CancellationToken cancel = default)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        return await database.Photos.AsNoTracking().SingleOrDefaultAsync(p => p.File == file, cancel);
    }
}
