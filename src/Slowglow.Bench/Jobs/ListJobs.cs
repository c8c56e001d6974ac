using Microsoft.EntityFrameworkCore;
using Slowglow.Storage;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Bench.Jobs;

/// <summary>The job book.</summary>
public sealed class ListJobs(IDbContextFactory<ShopDatabase> shop)
{
    public const int Most = 200;

    /// <summary>The newest jobs, lowest number first.</summary>
    public Task<IReadOnlyList<JobLine>> RunAsync(CancellationToken cancel = default) => NewestAsync((_, cards) => cards, cancel);

    /// <summary>One job, the lowest, of each unit that has a sheet: those that can be practised on. Lowest number first.</summary>
    public async Task<IReadOnlyList<JobLine>> DrawnAsync(CancellationToken cancel = default) =>
        [
            .. (
                await NewestAsync(
                    (database, cards) => cards.Where(c => database.Jobs.Any(j => j.Number == c.JobNumber && j.Sheet != null)),
                    cancel
                )
            ).DistinctBy(l => l.Unit),
        ];

    private async Task<IReadOnlyList<JobLine>> NewestAsync(
        Func<ShopDatabase, IQueryable<BoardCard>, IQueryable<BoardCard>> of,
        CancellationToken cancel
    )
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var cards = await of(database, database.Board.AsNoTracking())
            .OrderByDescending(c => c.JobNumber)
            .Take(Most)
            .ToListAsync(cancel);
        return [.. cards.OrderBy(c => c.JobNumber).Select(Line)];
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
