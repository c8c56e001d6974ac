using Microsoft.EntityFrameworkCore;

namespace Slowglow.Storage;

/// <summary>How much is in a shop.</summary>
public sealed record RowCounts(int Customers, int Jobs, int Entries, int Papers, int Photos)
{
    public static async Task<RowCounts> OfAsync(ShopDatabase database, CancellationToken cancel = default) =>
        new(
            await database.Customers.CountAsync(cancel),
            await database.Jobs.CountAsync(cancel),
            await database.Timeline.CountAsync(cancel),
            await database.Papers.CountAsync(cancel),
            await database.Photos.CountAsync(cancel)
        );
}
