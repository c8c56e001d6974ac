using Microsoft.EntityFrameworkCore;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Storage;

/// <summary>Writes the cards of jobs that have none, or an old one: after an upgrade, or when something else wrote to the database.</summary>
public static class BoardUpkeep
{
    private const int AtOnce = 200;

    /// <returns>How many cards were written.</returns>
    public static async Task<int> RunAsync(ShopDatabase database, CancellationToken cancel = default)
    {
        var written = 0;
        while (true)
        {
            var behind = await database
                .Jobs.Where(j =>
                    !database.Board.Any(c =>
                        c.JobNumber == j.Number
                        && c.LastSequence
                            == (database.Timeline.Where(e => e.JobNumber == j.Number).Max(e => (int?)e.Sequence) ?? 0)
                    )
                )
                .OrderBy(j => j.Number)
                .Take(AtOnce)
                .Include(j => j.Customer)
                .Include(j => j.Timeline)
                .AsSplitQuery()
                .ToListAsync(cancel);
            if (behind.Count == 0)
            {
                return written;
            }

            await WriteAsync(database, behind, cancel);
            written += behind.Count;
            database.ChangeTracker.Clear();
        }
    }

    private static async Task WriteAsync(ShopDatabase database, List<Job> jobs, CancellationToken cancel)
    {
        var numbers = jobs.Select(j => j.Number).ToList();
        var cards = await database.Board.Where(c => numbers.Contains(c.JobNumber)).ToDictionaryAsync(c => c.JobNumber, cancel);
        foreach (var job in jobs)
        {
            if (cards.TryGetValue(job.Number, out var card))
            {
                card.Rewrite(job);
            }
            else
            {
                database.Board.Add(BoardCard.Of(job));
            }
        }

        await database.SaveChangesAsync(cancel);
    }
}
