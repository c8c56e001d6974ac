using System.Data.Common;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Slowglow.Storage.Postgres;
using Slowglow.Storage.Sqlite;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Storage.Tests;

/// <summary>A shop that began with the first version of either kind of database keeps everything.</summary>
public sealed class UpgradeTests(PostgresServer server)
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task File_of_the_first_version_is_brought_up_with_its_jobs()
    {
        var folder = Directory.CreateTempSubdirectory("slowglow-upgrade-").FullName;
        await UpgradeAsync(new SqliteShop(Path.Combine(folder, "shop.db")), FirstFile, "");
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Server_of_the_first_version_is_brought_up_with_its_jobs() =>
        await UpgradeAsync(new PostgresShop(await server.NewDatabaseAsync()), FirstServer, "ada@example.test");

    private static async Task UpgradeAsync(IShopStore shop, string customers, string mail)
    {
        await using (var old = shop.CreateDbContext())
        {
            await old.GetService<IMigrator>().MigrateAsync("First", Cancel);
            await old.Database.ExecuteSqlRawAsync(customers, Cancel);
            await old.Database.ExecuteSqlRawAsync(FirstVersion, Cancel);
        }

        await shop.PrepareAsync(Cancel);

        await using var database = shop.CreateDbContext();
        var job = await database.Jobs.Include(j => j.Customer).Include(j => j.Sheet).Include(j => j.Timeline).SingleAsync(Cancel);
        Assert.Equal(("Ada Fenwick", "by letter", mail), (job.Customer.Name, job.Customer.Contact, job.Customer.Mail));
        Assert.Equal("sheet: 1", job.Sheet!.Text);
        Assert.Equal(199.95m, job.Limit!.Figure);
        Assert.Equal(("thin", JobState.OnSoak), (job.Standing().Complaint, job.Standing().State));
        var card = await database.Board.SingleAsync(Cancel);
        Assert.Equal((1001, 3, WaitsFor.Us), (card.JobNumber, card.LastSequence, card.WaitsFor));
        Assert.Equal(1001, Assert.Single(await BoardWords.FindAsync(database, ["fenwick"], 5, Cancel)).JobNumber);
        await Assert.ThrowsAnyAsync<DbException>(() => database.Database.ExecuteSqlRawAsync("DELETE FROM timeline", Cancel));
        Assert.False(database.Database.HasPendingModelChanges());
    }

    private const string FirstFile = "INSERT INTO customers VALUES (1, 'Ada Fenwick', 'by letter');";

    // The server's first version is younger than the file's: it had mail, address and papers already.
    private const string FirstServer = """
        INSERT INTO customers ("Id", "Name", "Contact", "Mail", "Address") VALUES (1, 'Ada Fenwick', 'by letter', 'ada@example.test', '');
        """;

    private const string FirstVersion = """
        INSERT INTO sheets ("Id", "Title", "Text", "AddedAt") VALUES (1, 'Tern 2', 'sheet: 1', 1793611815250);
        INSERT INTO jobs ("Number", "CustomerId", "SheetId", "BookedIn", "Promised", limit_figure, limit_currency, mains_volts, maker, model, serial)
          VALUES (1001, 1, 1, 1793611815250, NULL, '199.95', 'EUR', 230, 'Harrow & Pike', 'Tern 2', 'HP-0417');
        INSERT INTO timeline ("JobNumber", "Sequence", "At", kind, text) VALUES (1001, 1, 1793611815250, 'booked in', 'thin');
        INSERT INTO timeline ("JobNumber", "Sequence", "At", kind, text, setup)
          VALUES (1001, 2, 1793611815251, 'reading taken', 'HT1 = 280 V', 'bench');
        INSERT INTO timeline ("JobNumber", "Sequence", "At", kind, text) VALUES (1001, 3, 1793611815252, 'state changed', 'OnSoak');
        """;
}
