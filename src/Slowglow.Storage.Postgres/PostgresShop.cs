using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage;
using Npgsql;

namespace Slowglow.Storage.Postgres;

/// <summary>The shop's records in a PostgreSQL database, for several benches at once.</summary>
public sealed class PostgresShop : IShopStore
{
    private readonly DbContextOptions<ShopDatabase> options;

    /// <param name="connection">Connection string: <c>Host=...;Database=...;Username=...</c>.</param>
    public PostgresShop(string connection) =>
        options = new DbContextOptionsBuilder<ShopDatabase>()
            .UseNpgsql(
                connection,
                // The provider's own strategy dresses a full disk or a lost server up as a mistake of the program.
                postgres =>
                    postgres
                        .MigrationsAssembly(typeof(PostgresShop).Assembly.GetName().Name)
                        .ExecutionStrategy(context => new NonRetryingExecutionStrategy(context))
            )
            .Options;

    /// <summary>True when it says where a database would be; whether one is there is another matter.</summary>
    public static bool CanRead(string connection)
    {
        try
        {
            using var source = NpgsqlDataSource.Create(connection);
            return true;
        }
        catch (Exception e) when (e is ArgumentException or FormatException)
        {
            return false;
        }
    }

    /// <inheritdoc/>
    public ShopDatabase CreateDbContext() => new(options);

    /// <summary>Makes the tables, or brings older ones up to this program. The database itself has to be there.</summary>
    public async Task PrepareAsync(CancellationToken cancel = default)
    {
        await using var database = CreateDbContext();
        await database.Database.MigrateAsync(cancel);
        await BoardUpkeep.RunAsync(database, cancel);
    }
}
