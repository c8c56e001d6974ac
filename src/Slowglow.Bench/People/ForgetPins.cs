using Microsoft.EntityFrameworkCore;
using Slowglow.Storage;

namespace Slowglow.Bench.People;

/// <summary>Takes every PIN away, for an owner who has forgotten it. Whoever can run it has the shop's file in hand already.</summary>
public sealed class ForgetPins(IDbContextFactory<ShopDatabase> shop)
{
    public async Task RunAsync(CancellationToken cancel = default)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        if (await database.Settings.SingleOrDefaultAsync(cancel) is { Rules: { } rules } settings)
        {
            settings.Rules = rules with { People = [.. rules.People.Select(p => p with { Pin = "" })] };
            await database.SaveChangesAsync(cancel);
        }
    }
}
