using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Storage;

namespace Slowglow.Bench.Keeping;

/// <summary>Carries the shop over into a database for several benches. The old one stays as it was.</summary>
public sealed class MoveShop(IDbContextFactory<ShopDatabase> from, IShopMove move)
{
    /// <summary>What was carried over, table by table; findings when nothing was.</summary>
    public async Task<Parsed<IReadOnlyList<MovedTable>>> RunAsync(CancellationToken cancel = default)
    {
        try
        {
            await using var database = await from.CreateDbContextAsync(cancel);
            return new(await move.RunAsync(database, cancel), []);
        }
        catch (CopyFailedException e)
        {
            return new(
                null,
                Said.Wrong(
                    $"The shop was not moved: {e.Message}.",
                    "Host=...;Database=...;Username=...: an empty database on a server that runs; stop the bench page first."
                )
            );
        }
    }
}
