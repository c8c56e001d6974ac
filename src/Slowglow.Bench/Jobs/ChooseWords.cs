using Microsoft.EntityFrameworkCore;
using Slowglow.Storage;
using Slowglow.Workshop.Words;

namespace Slowglow.Bench.Jobs;

/// <summary>Settles which words of the trade the shop uses.</summary>
public sealed class ChooseWords(IDbContextFactory<ShopDatabase> shop, JobNews news)
{
    public async Task RunAsync(TradeWords words, CancellationToken cancel = default)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var settings = await database.Settings.SingleOrDefaultAsync(cancel);
        if (settings is null)
        {
            settings = new ShopSettings();
            database.Settings.Add(settings);
        }

        settings.Words = words;
        await database.SaveChangesAsync(cancel);
        news.TellSettings();
    }
}
