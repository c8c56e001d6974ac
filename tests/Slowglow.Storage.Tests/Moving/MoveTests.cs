using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Keeping;
using Slowglow.Bench.Papers;
using Slowglow.Bench.Photographs;
using Slowglow.Bench.Stock;
using Slowglow.Storage.Postgres;
using Slowglow.Storage.Postgres.Moving;
using Slowglow.Storage.Records;
using Slowglow.Storage.Tests.Counter;
using Slowglow.Storage.Tests.Photographs;
using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests.Moving;

/// <summary>A shop goes from its file to a server whole, or not at all.</summary>
public sealed class MoveTests(PostgresServer server)
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Every_row_comes_over_and_the_shop_goes_on_there()
    {
        await using var file = await FullShopAsync();
        var shop = new PostgresShop(await server.NewDatabaseAsync());

        var moved = await new MoveShop(file.Shop, new PostgresMove(shop)).RunAsync(Cancel);

        Assert.Empty(moved.Findings);
        await using (var old = file.Shop.CreateDbContext())
        await using (var now = shop.CreateDbContext())
        {
            var names = old.Model.GetEntityTypes().Select(t => t.GetTableName()).Distinct().Order().ToList();
            Assert.Equal(names, moved.Value!.Select(t => t.Table).Order());
            Assert.All(moved.Value!, t => Assert.True(t.Rows > 0, t.Table));
            Assert.Equal(await RowCounts.OfAsync(old, Cancel), await RowCounts.OfAsync(now, Cancel));
            var (before, after) = (await JobsAsync(old), await JobsAsync(now));
            Assert.Equal(before, after);
            Assert.Equal(
                await old.Photos.OrderBy(p => p.File).Select(p => p.Content).ToListAsync(Cancel),
                await now.Photos.OrderBy(p => p.File).Select(p => p.Content).ToListAsync(Cancel)
            );
            var logo = (await now.Settings.SingleAsync(Cancel)).Rules!.Party.Logo;
            Assert.Equal(PhotoContract.Picture, (await new ReadPhoto(shop).RunAsync(logo, Cancel))!.Content);
        }

        // Numbers go on behind those that came over.
        var floor = new ShopFloor(shop);
        var booked = await floor.BookAsync();
        Assert.Equal(1002, booked);
        await floor.DoAsync(booked, new NoteWritten { Text = "first on the server" });
        await using var database = shop.CreateDbContext();
        await Assert.ThrowsAsync<Npgsql.PostgresException>(() =>
            database.Database.ExecuteSqlRawAsync("DELETE FROM timeline", Cancel)
        );
    }

    [Fact]
    public async Task Database_with_a_shop_in_it_is_refused_and_stays_as_it_is()
    {
        await using var file = await FullShopAsync();
        await using var taken = await PostgresUnderTest.StartAsync(server);
        await new ShopFloor(taken.Shop).BookAsync();

        var moved = await new MoveShop(file.Shop, new PostgresMove((PostgresShop)taken.Shop)).RunAsync(Cancel);

        Assert.Contains("holds a shop already", Assert.Single(moved.Findings).Text, StringComparison.Ordinal);
        await using var database = taken.Shop.CreateDbContext();
        Assert.Equal(1, await database.Jobs.CountAsync(Cancel));
    }

    [Theory]
    [InlineData("NUL\0 in a note", "holds a sign without a shape (NUL) in text")]
    [InlineData(null, "longer than the other database takes")]
    public async Task What_the_server_cannot_keep_is_named_and_nothing_is_left_half_moved(string? note, string said)
    {
        await using var file = await FullShopAsync();
        await using (var database = file.Shop.CreateDbContext())
        {
            if (note is not null)
            {
                database.Timeline.Add(
                    new NoteWritten
                    {
                        JobNumber = 1001,
                        Sequence = 90,
                        At = Sample.Monday,
                        Text = note,
                    }
                );
            }
            else
            {
                database.Customers.Add(new Customer { Name = new string('x', 300) });
            }

            await database.SaveChangesAsync(Cancel);
        }

        var shop = new PostgresShop(await server.NewDatabaseAsync());
        var moved = await new MoveShop(file.Shop, new PostgresMove(shop)).RunAsync(Cancel);

        Assert.Contains(said, Assert.Single(moved.Findings).Text, StringComparison.Ordinal);
        await using var left = shop.CreateDbContext();
        Assert.Equal(new RowCounts(0, 0, 0, 0, 0), await RowCounts.OfAsync(left, Cancel));
    }

    [Fact]
    public async Task Server_that_is_not_there_gets_a_sentence()
    {
        await using var file = await FullShopAsync();
        var nowhere = new PostgresShop("Host=/no/such/folder;Username=nobody;Database=none;Timeout=2");

        var moved = await new MoveShop(file.Shop, new PostgresMove(nowhere)).RunAsync(Cancel);

        Assert.Contains("cannot be reached", Assert.Single(moved.Findings).Text, StringComparison.Ordinal);
    }

    /// <summary>A row in every table, with every kind of entry.</summary>
    private static async Task<SqliteUnderTest> FullShopAsync()
    {
        var file = await SqliteUnderTest.StartAsync();
        await using (var database = file.Shop.CreateDbContext())
        {
            var job = Sample.Job(1001);
            job.Timeline.AddRange(Sample.WithRecords(1001));
            database.Jobs.Add(job);
            database.Papers.Add(Sample.Paper(1001, 1));
            database.Photos.Add(
                new KeptPhoto
                {
                    File = "ab12.jpg",
                    Kind = Workshop.Photos.PhotoKind.Jpeg,
                    Content = [0, 255, 1, 254],
                    At = Sample.Monday,
                }
            );
            await database.SaveChangesAsync(Cancel);
            await BoardUpkeep.RunAsync(database, Cancel);
        }

        var settings = new SettingsWriter(file.Shop, new JobNews());
        Assert.Empty(await new ChooseLogo(settings, TimeProvider.System).RunAsync("wordmark.png", PhotoContract.Picture, Cancel));
        var added = await new AddStockItem(new StockWriter(file.Shop, TimeProvider.System)).RunAsync(
            "EL84",
            "A3",
            "6BQ5",
            2,
            3,
            11.505m,
            null,
            Cancel
        );
        Assert.Empty(added.Findings);
        return file;
    }

    private static async Task<string> JobsAsync(ShopDatabase database)
    {
        var jobs = await database
            .Jobs.AsNoTracking()
            .Include(j => j.Customer)
            .Include(j => j.Timeline.OrderBy(e => e.Sequence))
            .ToListAsync(Cancel);
        return string.Join(
            '\n',
            jobs.SelectMany(j => j.Timeline)
                .Select(e => Storage.Mappings.JsonText.Write<object>(e))
                .Prepend($"{jobs[0].Customer.Name} {jobs[0].Limit}")
        );
    }
}
