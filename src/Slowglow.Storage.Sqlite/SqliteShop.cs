using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Slowglow.Storage.Sqlite;

/// <summary>The shop's records in one SQLite file.</summary>
public sealed class SqliteShop : IShopStore
{
    private readonly DbContextOptions<ShopDatabase> options;

    /// <param name="path">Path of the file; made when it is not there.</param>
    public SqliteShop(string path)
    {
        var connection = new SqliteConnectionStringBuilder
        {
            DataSource = path,
            ForeignKeys = true,
            DefaultTimeout = 15,
        }.ToString();
        options = new DbContextOptionsBuilder<ShopDatabase>()
            .UseSqlite(connection, sqlite => sqlite.MigrationsAssembly(typeof(SqliteShop).Assembly.GetName().Name))
            .Options;
    }

    /// <inheritdoc/>
    public ShopDatabase CreateDbContext() => new(options);

    /// <summary>Makes the file, or brings an older one up to this program. A commit is on the disk when it returns (WAL, full sync).</summary>
    public async Task PrepareAsync(CancellationToken cancel = default)
    {
        await using var database = CreateDbContext();
        await database.Database.MigrateAsync(cancel);
        await database.Database.ExecuteSqlRawAsync("PRAGMA journal_mode=WAL;", cancel);
        await BoardUpkeep.RunAsync(database, cancel);
    }
}
