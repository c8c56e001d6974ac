using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Slowglow.Storage.Sqlite;

namespace Slowglow.Storage.Tests;

/// <summary>A SQLite file under the temporary folder.</summary>
public sealed class SqliteUnderTest : IShopUnderTest
{
    private readonly string folder = Directory.CreateTempSubdirectory("slowglow-storage-").FullName;
    private readonly SqliteShop shop;

    private SqliteUnderTest() => shop = new SqliteShop(FilePath);

    public string FilePath => Path.Combine(folder, "shop.db");

    public IDbContextFactory<ShopDatabase> Shop => shop;

    public static async Task<SqliteUnderTest> StartAsync()
    {
        var made = new SqliteUnderTest();
        await made.shop.PrepareAsync(TestContext.Current.CancellationToken);
        return made;
    }

    public IDbContextFactory<ShopDatabase> Reopened()
    {
        SqliteConnection.ClearAllPools();
        return new SqliteShop(FilePath);
    }

    public ValueTask DisposeAsync()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
        return ValueTask.CompletedTask;
    }
}
