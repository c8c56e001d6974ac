using Microsoft.EntityFrameworkCore;
using Slowglow.Storage;

namespace Slowglow.Bench.Counter;

/// <summary>Looks through the job book: name, telephone, unit, serial, number of the job, words of a complaint, in any order.</summary>
public sealed class SearchBook(IDbContextFactory<ShopDatabase> shop)
{
    private const int MostWords = 6;
    private const int MostCustomers = 6;
    private const int MostJobs = 40;

    /// <summary>Everything in which each word occurs; nothing for an empty line.</summary>
    public async Task<FoundInBook> RunAsync(string typed, CancellationToken cancel = default)
    {
        var words = SearchWords.Of(typed).Take(MostWords).ToList();
        if (words.Count == 0)
        {
            return new([], []);
        }

        await using var database = await shop.CreateDbContextAsync(cancel);
        var jobs = await BoardWords.FindAsync(database, words, MostJobs, cancel);
        var ids = jobs.Select(j => j.CustomerId).Distinct().Take(MostCustomers).ToList();
        var owners = await database.Customers.AsNoTracking().Where(c => ids.Contains(c.Id)).ToListAsync(cancel);
        return new([.. owners.OrderBy(c => ids.IndexOf(c.Id))], jobs);
    }
}
