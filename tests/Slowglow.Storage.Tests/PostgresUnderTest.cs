using Microsoft.EntityFrameworkCore;
using Slowglow.Storage.Postgres;

namespace Slowglow.Storage.Tests;

/// <summary>A database of its own on the test server.</summary>
public sealed class PostgresUnderTest : IShopUnderTest
{
    private readonly string connection;
    private readonly PostgresShop shop;

    private PostgresUnderTest(string connection)
    {
        this.connection = connection;
        shop = new PostgresShop(connection);
    }

    public IDbContextFactory<ShopDatabase> Shop => shop;

    public static async Task<PostgresUnderTest> StartAsync(PostgresServer server)
    {
        var made = new PostgresUnderTest(await server.NewDatabaseAsync());
        await made.shop.PrepareAsync(TestContext.Current.CancellationToken);
        return made;
    }

    public IDbContextFactory<ShopDatabase> Reopened() => new PostgresShop(connection);

    public ValueTask DisposeAsync()
    {
        Npgsql.NpgsqlConnection.ClearAllPools();
        return ValueTask.CompletedTask;
    }
}
