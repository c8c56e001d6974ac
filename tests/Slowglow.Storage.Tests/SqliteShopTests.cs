using Microsoft.EntityFrameworkCore;

namespace Slowglow.Storage.Tests;

public sealed class SqliteShopTests : ShopContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await SqliteUnderTest.StartAsync();

    [Fact]
    public async Task File_is_in_wal_mode_with_full_sync_and_foreign_keys()
    {
        var cancel = TestContext.Current.CancellationToken;
        await using var under = await SqliteUnderTest.StartAsync();
        await using var database = under.Reopened().CreateDbContext();

        Assert.Equal("wal", await PragmaAsync(database, "journal_mode", cancel));
        Assert.Equal("2", await PragmaAsync(database, "synchronous", cancel));
        Assert.Equal("1", await PragmaAsync(database, "foreign_keys", cancel));
    }

    private static async Task<string?> PragmaAsync(ShopDatabase database, string name, CancellationToken cancel)
    {
        await database.Database.OpenConnectionAsync(cancel);
        await using var command = database.Database.GetDbConnection().CreateCommand();
        command.CommandText = $"PRAGMA {name};";
        return Convert.ToString(await command.ExecuteScalarAsync(cancel), System.Globalization.CultureInfo.InvariantCulture);
    }
}
