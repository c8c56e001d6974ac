using Microsoft.EntityFrameworkCore;
using Slowglow.Sheets;
using Slowglow.Storage;
using Slowglow.Workshop.Shop;
using Slowglow.Workshop.Words;

namespace Slowglow.Bench.Jobs;

/// <summary>Settles the shop's rules. Papers issued before keep theirs.</summary>
public sealed class ChangeRules(IDbContextFactory<ShopDatabase> shop, JobNews news)
{
    public async Task<IReadOnlyList<Finding>> RunAsync(ShopRules rules, CancellationToken cancel = default)
    {
        var wrong = RulesCheck.Look(rules);
        if (wrong.Count > 0)
        {
            return Said.Of(wrong);
        }

        await using var database = await shop.CreateDbContextAsync(cancel);
        var settings = await database.Settings.SingleOrDefaultAsync(cancel);
        if (settings is null)
        {
            settings = new ShopSettings();
            database.Settings.Add(settings);
        }

        settings.Rules = rules with { AreExamples = false };
        await database.SaveChangesAsync(cancel);
        news.TellSettings();
        return [];
    }
}
