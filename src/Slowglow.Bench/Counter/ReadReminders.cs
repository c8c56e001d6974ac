using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Storage;
using Slowglow.Workshop.Collecting;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Counter;

/// <summary>Whom the shop's rules want reminded today: customers whose unit stands ready, suppliers who are silent.</summary>
public sealed class ReadReminders(IDbContextFactory<ShopDatabase> shop, TimeProvider clock)
{
    /// <summary>The longest silence first.</summary>
    public async Task<IReadOnlyList<JobReminder>> RunAsync(CancellationToken cancel = default)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var rules = await JobLedger.RulesAsync(database, cancel);
        var today = ShopDay.Today(clock);
        var cards = await Candidates(database).AsNoTracking().ToDictionaryAsync(c => c.JobNumber, cancel);
        var entries = await Entries(database).AsNoTracking().ToListAsync(cancel);
        return
        [
            .. entries
                .GroupBy(e => e.JobNumber)
                .SelectMany(job =>
                    Reminding
                        .Due(JobDealings.After(job), rules, today, time => ShopDay.Of(time, clock))
                        .Select(due => new JobReminder(cards[job.Key], due))
                )
                .OrderBy(r => r.Due.Since)
                .ThenBy(r => r.Card.JobNumber),
        ];
    }

    /// <summary>Those that wait for parts, or to be collected.</summary>
    private static IQueryable<BoardCard> Candidates(ShopDatabase database) =>
        database.Board.Where(c => c.WaitsFor != WaitsFor.Nothing && (c.WaitsFor == WaitsFor.Collection || c.Blocked != ""));

    /// <summary>All that moves a job on, and what was said to its owner and its suppliers: readings and notes are left where they are.</summary>
    private static IQueryable<TimelineEntry> Entries(ShopDatabase database) =>
        database
            .Timeline.Where(e => Candidates(database).Any(c => c.JobNumber == e.JobNumber))
            .Where(e =>
                e is StateChanged
                || e is MarkedReady
                || e is HandedOver
                || e is QuoteGiven
                || e is QuoteAnswered
                || e is PartsOrdered
                || e is PartsArrived
                || e is OrderChased
                || e is OwnerReminded
                || e is EntryStruck
            );
}
