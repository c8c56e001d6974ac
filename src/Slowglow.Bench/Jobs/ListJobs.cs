using Microsoft.EntityFrameworkCore;
using Slowglow.Storage;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Bench.Jobs;

/// <summary>The job book.</summary>
public sealed class ListJobs(IDbContextFactory<ShopDatabase> shop)
{
    public const int Most = 200;

    /// <summary>The newest jobs, lowest number first.</summary>
    public async Task<IReadOnlyList<JobLine>> RunAsync(CancellationToken cancel = default)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var cards = await database.Board.AsNoTracking().OrderByDescending(c => c.JobNumber).Take(Most).ToListAsync(cancel);
        return [.. cards.OrderBy(c => c.JobNumber).Select(Line)];
    }

    /// <summary>One job, the lowest, of each unit that has a sheet: those that can be practised on. Lowest number first.</summary>
    public async Task<IReadOnlyList<JobLine>> DrawnAsync(CancellationToken cancel = default)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var drawn = database.Jobs.Where(j => j.Sheet != null).Select(j => j.Number);
        var cards = await database
            .Board.AsNoTracking()
            .Where(c => drawn.Contains(c.JobNumber))
            .OrderByDescending(c => c.JobNumber)
            .Take(Most)
            .ToListAsync(cancel);
        return [.. cards.OrderBy(c => c.JobNumber).Select(Line).DistinctBy(l => l.Unit)];
    }

    private static JobLine Line(BoardCard card) =>
        new(
            card.JobNumber,
            card.Unit,
            card.Customer,
            card.Complaint,
            JobStateWords.Say(card.State),
            card.BookedIn,
            card.Promised,
            card.Readings
        );
}
