using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Storage;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Papers;

/// <summary>Opens the paper side of a job, with what the shop remembers of the unit and the model.</summary>
public sealed class ReadJobFile(IDbContextFactory<ShopDatabase> shop, TimeProvider clock)
{
    private const int Most = 8;

    public async Task<Parsed<JobFile>> RunAsync(int number, CancellationToken cancel = default)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var job = await database
            .Jobs.AsNoTracking()
            .Include(j => j.Customer)
            .Include(j => j.Timeline)
            .AsSplitQuery()
            .SingleOrDefaultAsync(j => j.Number == number, cancel);
        if (job is null)
        {
            return new(null, Said.NoJob(number));
        }

        var card = BoardCard.Of(job);
        var papers = await database
            .Papers.AsNoTracking()
            .Where(p => p.JobNumber == number)
            .OrderBy(p => p.Day)
            .ThenBy(p => p.Number)
            .ToListAsync(cancel);
        var unit = card.UnitKey.Length == 0 ? [] : await VisitsAsync(database, number, c => c.UnitKey == card.UnitKey, cancel);
        var known = unit.Select(v => v.Number).ToHashSet();
        var model =
            card.ModelKey.Length == 0 ? [] : await VisitsAsync(database, number, c => c.ModelKey == card.ModelKey, cancel);
        return new(
            new JobFile(
                job,
                job.Standing(),
                JobDealings.After(job.Timeline),
                await JobLedger.RulesAsync(database, cancel),
                ShopDay.Today(clock),
                card.Promised,
                [.. papers.Select(p => p.Paper)],
                unit,
                [.. model.Where(v => !known.Contains(v.Number))]
            ),
            []
        );
    }

    private static async Task<List<PastVisit>> VisitsAsync(
        ShopDatabase database,
        int but,
        System.Linq.Expressions.Expression<Func<BoardCard, bool>> which,
        CancellationToken cancel
    )
    {
        var cards = await database
            .Board.AsNoTracking()
            .Where(which)
            .Where(c => c.JobNumber != but)
            .OrderByDescending(c => c.JobNumber)
            .Take(Most)
            .ToListAsync(cancel);
        var numbers = cards.Select(c => c.JobNumber).ToList();
        var entries = await database
            .Timeline.AsNoTracking()
            .Where(e =>
                numbers.Contains(e.JobNumber) && (e is ReportWritten || e is HandedOver || e is NoteWritten || e is EntryStruck)
            )
            .ToListAsync(cancel);
        return [.. cards.Select(c => Visit(c, JobDealings.After(entries.Where(e => e.JobNumber == c.JobNumber))))];
    }

    private static PastVisit Visit(BoardCard card, JobDealings dealings)
    {
        var note = dealings
            .Counting.OfType<NoteWritten>()
            .LastOrDefault(n => n.Text.TrimStart().StartsWith("found", StringComparison.OrdinalIgnoreCase));
        return new(
            card.JobNumber,
            card.Unit,
            card.Customer,
            card.BookedIn,
            card.Complaint,
            dealings.Report?.Found ?? note?.Text ?? "",
            dealings.Handover?.WarrantyUntil
        );
    }
}
