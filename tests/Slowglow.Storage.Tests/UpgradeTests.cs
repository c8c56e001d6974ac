using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Slowglow.Storage.Sqlite;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Storage.Tests;

/// <summary>A shop that began with the first version keeps everything.</summary>
public sealed class UpgradeTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task File_of_the_first_version_is_brought_up_with_its_jobs()
    {
        var folder = Directory.CreateTempSubdirectory("slowglow-upgrade-").FullName;
        var shop = new SqliteShop(Path.Combine(folder, "shop.db"));
        await using (var old = shop.CreateDbContext())
        {
            await old.GetService<IMigrator>().MigrateAsync("First", Cancel);
            await old.Database.ExecuteSqlRawAsync(FirstVersion, Cancel);
        }

        await shop.PrepareAsync(Cancel);

        await using (var database = shop.CreateDbContext())
        {
            var job = await database
                .Jobs.Include(j => j.Customer)
                .Include(j => j.Sheet)
                .Include(j => j.Timeline)
                .SingleAsync(Cancel);
            Assert.Equal(("Ada Fenwick", "by letter", ""), (job.Customer.Name, job.Customer.Contact, job.Customer.Mail));
            Assert.Equal("sheet: 1", job.Sheet!.Text);
            Assert.Equal(199.95m, job.Limit!.Figure);
            Assert.Equal(("thin", JobState.OnSoak), (job.Standing().Complaint, job.Standing().State));
            var card = await database.Board.SingleAsync(Cancel);
            Assert.Equal((1001, 3, WaitsFor.Us), (card.JobNumber, card.LastSequence, card.WaitsFor));
            await Assert.ThrowsAsync<SqliteException>(() => database.Database.ExecuteSqlRawAsync("DELETE FROM timeline", Cancel));
            Assert.False(database.Database.HasPendingModelChanges());
        }

        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    private const string FirstVersion = """
        INSERT INTO customers VALUES (1, 'Ada Fenwick', 'by letter');
        INSERT INTO sheets VALUES (1, 'Tern 2', 'sheet: 1', 1793611815250);
        INSERT INTO jobs (Number, CustomerId, SheetId, BookedIn, Promised, limit_figure, limit_currency, mains_volts, maker, model, serial)
          VALUES (1001, 1, 1, 1793611815250, NULL, '199.95', 'EUR', 230, 'Harrow & Pike', 'Tern 2', 'HP-0417');
        INSERT INTO timeline (JobNumber, Sequence, At, kind, text) VALUES (1001, 1, 1793611815250, 'booked in', 'thin');
        INSERT INTO timeline (JobNumber, Sequence, At, kind, text, setup) VALUES (1001, 2, 1793611815251, 'reading taken', 'HT1 = 280 V', 'bench');
        INSERT INTO timeline (JobNumber, Sequence, At, kind, text) VALUES (1001, 3, 1793611815252, 'state changed', 'OnSoak');
        """;
}
