using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Counter;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Photographs;
using Slowglow.Bench.Stock;
using Slowglow.Storage.Tests.Counter;
using Slowglow.Storage.Tests.Photographs;
using Slowglow.Workshop.Shop;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests.Full;

/// <summary>A server whose disk is full says so with SQLSTATE 53100 (disk_full, PostgreSQL manual, appendix A).</summary>
public sealed class PostgresFullDiskTests(PostgresServer server)
{
    private const string Sentence = "This could not be stored.";
    private const string SmallDisk = "SLOWGLOW_SMALL_DISK";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>The server itself answers as it does without room: a trigger raises what it raises then.</summary>
    [Fact]
    public async Task Every_way_of_storing_gets_a_sentence_and_goes_in_once_there_is_room()
    {
        await using var under = await PostgresUnderTest.StartAsync(server);
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync();
        await using (var database = under.Shop.CreateDbContext())
        {
            await database.Database.ExecuteSqlRawAsync(Fill, Cancel);
        }

        Assert.All(
            await StoreAllAsync(under, floor, job),
            findings => Assert.EndsWith("could not be stored.", Assert.Single(findings).Text, StringComparison.Ordinal)
        );

        await using (var database = under.Shop.CreateDbContext())
        {
            await database.Database.ExecuteSqlRawAsync("DROP FUNCTION no_room() CASCADE", Cancel);
        }

        Assert.All(await StoreAllAsync(under, floor, job), Assert.Empty);
        Assert.Equal(2, (await floor.FileAsync(job)).Job.Timeline.Count);
    }

    /// <summary>
    /// On request: name a folder on a disk of some 60 MB that the server may write to. The database is put there, and a large file beside it is taken
    /// away once the disk is full.
    /// </summary>
    [Fact(Explicit = true)]
    public async Task Disk_that_is_really_full_loses_nothing_that_was_acknowledged()
    {
        var disk = Environment.GetEnvironmentVariable(SmallDisk);
        Assert.False(string.IsNullOrEmpty(disk), $"{SmallDisk} names no folder");
        var ballast = Path.Combine(Path.GetDirectoryName(disk)!, "ballast");
        await File.WriteAllBytesAsync(ballast, new byte[20_000_000], Cancel);
        var shop = new Postgres.PostgresShop(await server.NewDatabaseAsync(disk));
        await shop.PrepareAsync(Cancel);
        var floor = new ShopFloor(shop);
        var job = await floor.BookAsync();
        var (stored, refused) = await WriteUntilFullAsync(floor, job);

        Assert.Equal(Sentence, refused);
        var sequences = (await floor.FileAsync(job)).Job.Timeline.Select(e => e.Sequence).Order().ToList();
        Assert.Equal(Enumerable.Range(1, stored + 1), sequences);
        File.Delete(ballast);
        await floor.DoAsync(job, new NoteWritten { Text = "there is room again" });
    }

    /// <summary>Photographs of a megabyte that do not shrink when the server packs them.</summary>
    private static async Task<(int Stored, string Refused)> WriteUntilFullAsync(ShopFloor floor, int job)
    {
        var add = new AddPhoto(floor.Ledger, TimeProvider.System);
        for (var stored = 0; stored < 200; stored++)
        {
            var noise = System.Security.Cryptography.RandomNumberGenerator.GetBytes(1_000_000);
            byte[] photo = [.. PhotoContract.Picture[..^12], .. noise, .. PhotoContract.Picture[^12..]];
            if ((await add.RunAsync(job, new(photo, "noise"), cancel: Cancel)).Findings is [var wrong, ..])
            {
                return (stored, wrong.Text);
            }
        }

        return (200, "");
    }

    private static async Task<IReadOnlyList<Sheets.Finding>[]> StoreAllAsync(IShopUnderTest under, ShopFloor floor, int job) =>
        [
            (await floor.EnterAsync(job, new NoteWritten { Text = "smells burnt" })).Findings,
            (await new BookIn(under.Shop, TimeProvider.System, floor.News).RunAsync(ShopFloor.Booking, cancel: Cancel)).Findings,
            await new ChangeRules(new SettingsWriter(under.Shop, floor.News)).RunAsync(ExampleRules.Rules, Cancel),
            (
                await new AddStockItem(new StockWriter(under.Shop, TimeProvider.System)).RunAsync(
                    "EL84",
                    "A3",
                    "",
                    0,
                    0,
                    0,
                    cancel: Cancel
                )
            ).Findings,
        ];

    private const string Fill = """
        CREATE FUNCTION no_room() RETURNS trigger LANGUAGE plpgsql AS $$
          BEGIN RAISE EXCEPTION 'could not extend file "base/16384/2613": No space left on device' USING ERRCODE = '53100'; END $$;
        CREATE TRIGGER full_timeline BEFORE INSERT ON timeline FOR EACH ROW EXECUTE FUNCTION no_room();
        CREATE TRIGGER full_settings BEFORE INSERT OR UPDATE ON settings FOR EACH ROW EXECUTE FUNCTION no_room();
        CREATE TRIGGER full_stock BEFORE INSERT ON stock FOR EACH ROW EXECUTE FUNCTION no_room();
        """;
}
