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
