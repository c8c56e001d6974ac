using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.People;
using Slowglow.Bench.Photographs;
using Slowglow.Bench.Stock;
using Slowglow.Sheets;
using Slowglow.Storage;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.People;
using Slowglow.Workshop.Shop;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Jobs;

/// <summary>
/// Writes into timelines by the shop's rules. The rules look at exactly the timeline that the entry follows: when another bench was quicker, the
/// entry is looked at anew. Entry, board and paper are stored in one transaction.
/// </summary>
public sealed class JobLedger(IDbContextFactory<ShopDatabase> shop, TimeProvider clock, JobNews news)
{
    private const int Attempts = 12;

    /// <summary>Stores what the draft makes of the job, and tells everyone; findings when it may not or cannot be stored.</summary>
    internal async Task<Parsed<TimelineEntry>> WriteAsync(
        int jobNumber,
        string? by,
        Func<JobAtHand, Task<Draft>> draft,
        CancellationToken cancel
    )
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                var stored = await StoreAsync(jobNumber, by, draft, cancel);
                if (stored.Value is not null)
                {
                    news.Tell(jobNumber);
                }

                return stored;
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

    private async Task<Parsed<TimelineEntry>> StoreAsync(
        int jobNumber,
        string? by,
        Func<JobAtHand, Task<Draft>> draft,
        CancellationToken cancel
    )
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var job = await database
            .Jobs.Include(j => j.Customer)
            .Include(j => j.Timeline)
            .AsSplitQuery()
            .SingleOrDefaultAsync(j => j.Number == jobNumber, cancel);
        if (job is null)
        {
            return new(null, Said.NoJob(jobNumber));
        }

        var rules = await RulesAsync(database, cancel);
        if (Someone.Refuses(rules, null) is { } nobody)
        {
            return new(null, Said.Of([nobody]));
        }

        var drafted = await draft(new(database, job, JobDealings.After(job.Timeline), rules, ShopDay.Today(clock), cancel));
        if (drafted.Entry is not { } entry)
        {
            return new(null, Said.Of(drafted.Objections));
        }

        if (Someone.Refuses(rules, Rights.For(entry)) is { } refused)
        {
            return new(null, Said.Of([refused]));
        }

        entry.Place(jobNumber, job.Standing().LastSequence + 1, clock.GetUtcNow(), rules.AsksForPin ? Someone.Name : by);
        if (await StockLedger.MoveAsync(database, job, entry, rules.Currency, cancel) is { Count: > 0 } wrong)
        {
            return new(null, Said.Of(wrong));
        }

        job.Timeline.Add(entry);
        if (drafted.Paper is { } paper)
        {
            database.Papers.Add(paper);
        }

        if (drafted.Photo is { } photo)
        {
            await PhotoFiles.KeepAsync(database, photo, cancel);
        }

        await HangAsync(database, job, cancel);
        await database.SaveChangesAsync(cancel);
        return new(entry, []);
    }

    internal static async Task<ShopRules> RulesAsync(ShopDatabase database, CancellationToken cancel) =>
        (await database.Settings.AsNoTracking().SingleOrDefaultAsync(cancel))?.Rules ?? ExampleRules.Rules;

    private static async Task HangAsync(ShopDatabase database, Job job, CancellationToken cancel)
    {
        if (await database.Board.SingleOrDefaultAsync(c => c.JobNumber == job.Number, cancel) is { } card)
        {
            card.Rewrite(job);
        }
        else
        {
            database.Board.Add(BoardCard.Of(job));
        }
    }
}
