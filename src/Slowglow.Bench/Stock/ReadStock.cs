using Microsoft.EntityFrameworkCore;
using Slowglow.Storage;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Stock;

namespace Slowglow.Bench.Stock;

/// <summary>Looks through the bins.</summary>
public sealed class ReadStock(IDbContextFactory<ShopDatabase> shop)
{
    private const int Most = 200;
    private const int MostWords = 6;

    /// <summary>Items in whose part, bin or equivalents every word occurs; all for an empty line. By name, with their last moves.</summary>
    public async Task<IReadOnlyList<StockItem>> RunAsync(string typed = "", CancellationToken cancel = default)
    {
        var words = BoardCard.Fold(typed).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Take(MostWords);
        await using var database = await shop.CreateDbContextAsync(cancel);
        return await words
            .Aggregate(database.Stock.AsNoTracking(), (found, word) => found.Where(i => i.Words.Contains(word)))
            .OrderBy(i => i.Part)
            .ThenBy(i => i.Id)
            .Take(Most)
            .ToListAsync(cancel);
    }
}
