using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.People;
using Slowglow.Sheets;
using Slowglow.Storage;
using Slowglow.Workshop.People;
using Slowglow.Workshop.Shop;
using Slowglow.Workshop.Words;

namespace Slowglow.Bench.Jobs;

/// <summary>Settles the shop's rules. Papers issued before keep theirs.</summary>
public sealed class ChangeRules(IDbContextFactory<ShopDatabase> shop, JobNews news)
{
    /// <param name="keepExamples">The change says nothing of rates: example rates stay called so.</param>
    public async Task<IReadOnlyList<Finding>> RunAsync(
        ShopRules rules,
        CancellationToken cancel = default,
        bool keepExamples = false
    )
    {
        var wrong = RulesCheck.Look(rules);
        if (wrong.Count > 0)
        {
            return Said.Of(wrong);
        }

        await using var database = await shop.CreateDbContextAsync(cancel);
        var settings = await database.Settings.SingleOrDefaultAsync(cancel);
        if (Someone.Refuses(settings?.Rules ?? ExampleRules.Rules, Right.ChangeSettings) is { } refused)
        {
            return Said.Of([refused]);
        }

        if (settings is null)
        {
            settings = new ShopSettings();
            database.Settings.Add(settings);
        }

        settings.Rules = rules with { AreExamples = keepExamples && rules.AreExamples };
        await database.SaveChangesAsync(cancel);
        news.TellSettings();
        return [];
    }
}
