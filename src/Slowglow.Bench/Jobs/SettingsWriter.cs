using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.People;
using Slowglow.Sheets;
using Slowglow.Storage;
using Slowglow.Workshop;
using Slowglow.Workshop.People;
using Slowglow.Workshop.Shop;
using Slowglow.Workshop.Words;

namespace Slowglow.Bench.Jobs;

/// <summary>Changes what the shop has settled, for those who may, and says so when it cannot be stored.</summary>
public sealed class SettingsWriter(IDbContextFactory<ShopDatabase> shop, JobNews news)
{
    /// <param name="change">Changes the settings, or objects.</param>
    internal async Task<IReadOnlyList<Finding>> WriteAsync(
        Func<ShopDatabase, ShopSettings, Task<IReadOnlyList<Objection>>> change,
        CancellationToken cancel
    )
    {
        try
        {
            await using var database = await shop.CreateDbContextAsync(cancel);
            var known = await database.Settings.SingleOrDefaultAsync(cancel);
            if (Someone.Refuses(known?.Rules ?? ExampleRules.Rules, Right.ChangeSettings) is { } refused)
            {
                return Said.Of([refused]);
            }

            var settings = known ?? database.Settings.Add(new ShopSettings()).Entity;
            if (await change(database, settings) is { Count: > 0 } wrong)
            {
                return Said.Of(wrong);
            }

            await database.SaveChangesAsync(cancel);
        }
        catch (Exception e) when (e is DbUpdateException or DbException)
        {
            return Said.NotStored;
        }

        news.TellSettings();
        return [];
    }
}
