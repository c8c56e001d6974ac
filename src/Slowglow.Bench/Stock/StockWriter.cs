using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.People;
using Slowglow.Sheets;
using Slowglow.Storage;
using Slowglow.Workshop;
using Slowglow.Workshop.Stock;

namespace Slowglow.Bench.Stock;

/// <summary>Changes a bin by the rules; when another bench was quicker, looks at it anew.</summary>
public sealed class StockWriter(IDbContextFactory<ShopDatabase> shop, TimeProvider clock)
{
    private const int Attempts = 12;

    /// <param name="id">Null for a new item.</param>
    /// <param name="change">Changes the item (null when there is no such one) or objects.</param>
    internal async Task<Parsed<StockItem>> WriteAsync(
        int? id,
        Func<StockItem?, DateTimeOffset, (StockItem? Item, IReadOnlyList<Objection> Wrong)> change,
        CancellationToken cancel
    )
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                await using var database = await shop.CreateDbContextAsync(cancel);
                if (Someone.Refuses(await JobLedger.RulesAsync(database, cancel), null) is { } nobody)
                {
                    return new(null, Said.Of([nobody]));
                }

                var known = id is null ? null : await database.Stock.SingleOrDefaultAsync(i => i.Id == id, cancel);
                var (item, wrong) = change(known, clock.GetUtcNow());
                if (item is null || wrong.Count > 0)
                {
                    return new(null, Said.Of(wrong));
                }

                item.Describe();
                if (known is null)
                {
                    database.Stock.Add(item);
                }

                await database.SaveChangesAsync(cancel);
                return new(item, []);
            }
            catch (DbUpdateException) when (attempt < Attempts)
            {
                await Task.Delay(TimeSpan.FromMilliseconds(Random.Shared.Next(5, 15 * attempt)), clock, cancel);
            }
            catch (Exception e) when (e is DbUpdateException or DbException)
            {
                return new(null, Said.NotStored);
            }
        }
    }
}
