using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Storage;
using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Units;

namespace Slowglow.Bench.Counter;

/// <summary>Who came before, and with what.</summary>
public sealed class ReadCustomer(IDbContextFactory<ShopDatabase> shop)
{
    public async Task<Parsed<Customer>> RunAsync(int id, CancellationToken cancel = default)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var customer = await database.Customers.AsNoTracking().SingleOrDefaultAsync(c => c.Id == id, cancel);
        return new(customer, customer is null ? Said.Wrong("That customer is not in the book.", "Type the name.") : []);
    }

    /// <summary>The unit of an earlier job, to book it in again.</summary>
    public async Task<Parsed<UnitOnBench>> UnitAsync(int jobNumber, CancellationToken cancel = default)
    {
        await using var database = await shop.CreateDbContextAsync(cancel);
        var job = await database.Jobs.AsNoTracking().SingleOrDefaultAsync(j => j.Number == jobNumber, cancel);
        return new(job?.Unit, job is null ? Said.NoJob(jobNumber) : []);
    }
}
