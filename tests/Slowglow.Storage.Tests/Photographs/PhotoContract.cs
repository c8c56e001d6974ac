using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Keeping;
using Slowglow.Bench.Photographs;
using Slowglow.Storage.Tests.Counter;
using Slowglow.Workshop.Photos;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests.Photographs;

/// <summary>Photographs on the timeline, on every kind of database.</summary>
public abstract class PhotoContract
{
    // One point, as every PNG encoder writes it.
    internal static readonly byte[] Picture = Convert.FromBase64String(
        "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=="
    );

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    protected abstract Task<IShopUnderTest> StartAsync();

    [Fact]
    public async Task Photographs_come_with_the_booking_and_later_and_are_kept_once()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync(ShopFloor.Booking with { Photos = [new(Picture, "front"), new(Picture, "back")] });
        var another = await floor.BookAsync();
        Assert.Empty((await Add(floor).RunAsync(another, new(Picture, "burnt resistor"), "Bea", Cancel)).Findings);

        var photos = (await floor.FileAsync(job)).Dealings.Photos;
        Assert.Equal(["front", "back"], photos.Select(p => p.Caption));
        var stored = await new ReadPhoto(under.Reopened()).RunAsync(photos[0].File, Cancel);
        Assert.Equal((PhotoKind.Png, Picture.Length), (stored!.Kind, photos[0].Bytes));
        Assert.Equal(Picture, stored.Content);
        await using var database = under.Shop.CreateDbContext();
        Assert.Equal(1, await database.Photos.CountAsync(Cancel));
        var files = (
            await new ExportShop(under.Shop, TimeProvider.System).RunAsync(
                Directory.CreateTempSubdirectory("slowglow-export-").FullName,
                Cancel
            )
        ).Value!;
        Assert.Equal(Picture, await File.ReadAllBytesAsync(files.Single(f => Path.GetFileName(f) == photos[0].File), Cancel));
        Directory.Delete(Path.GetDirectoryName(files[0])!, recursive: true);
    }

    [Fact]
    public async Task What_is_no_photograph_is_told_and_nothing_is_booked()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var booking = ShopFloor.Booking with { Photos = [new(Picture, "front"), new("solder"u8.ToArray(), "list")] };

        var booked = await new Bench.Counter.BookIn(under.Shop, TimeProvider.System, floor.News).RunAsync(
            booking,
            cancel: Cancel
        );

        Assert.Equal("\"list\" is not a photograph, whatever its name says.", Assert.Single(booked.Findings).Text);
        await using var database = under.Shop.CreateDbContext();
        Assert.False(await database.Jobs.AnyAsync(Cancel) || await database.Photos.AnyAsync(Cancel));
    }

    [Fact]
    public async Task Two_benches_store_the_same_photograph_at_once()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var jobs = new[] { await floor.BookAsync(), await floor.BookAsync(), await floor.BookAsync() };

        var added = await Task.WhenAll(
            jobs.Select(j =>
                new AddPhoto(new ShopFloor(under.Reopened()).Ledger, TimeProvider.System).RunAsync(
                    j,
                    new(Picture, ""),
                    cancel: Cancel
                )
            )
        );

        Assert.All(added, a => Assert.Empty(a.Findings));
    }

    [Fact]
    public async Task Every_table_of_the_record_refuses_to_change_and_to_forget()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync(ShopFloor.Booking with { Photos = [new(Picture, "front")] });
        await new Bench.Papers.IssueInvoice(floor.Ledger).RunAsync(job, [ShopFloor.Line(100)], cancel: Cancel);
        var bins = new Bench.Stock.AddStockItem(new(under.Shop, TimeProvider.System));
        Assert.Empty((await bins.RunAsync("EL84", "A3", "", 0, 4, 9, cancel: Cancel)).Findings);
        foreach (var table in AppendOnly.Tables)
        {
            await using var database = under.Shop.CreateDbContext();
            var column = table == "photos" ? "\"At\"" : "\"JobNumber\"";
            foreach (var statement in new[] { $"DELETE FROM {table}", $"UPDATE {table} SET {column} = {column}" })
            {
                await Assert.ThrowsAnyAsync<System.Data.Common.DbException>(() =>
                    database.Database.ExecuteSqlRawAsync(statement, Cancel)
                );
            }
        }
    }

    [Fact]
    public async Task Photograph_that_was_struck_out_is_shown_no_more_and_stays()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync(ShopFloor.Booking with { Photos = [new(Picture, "another unit")] });
        var file = (await floor.FileAsync(job)).Dealings.Photos[0].File;
        await floor.DoAsync(job, new EntryStruck { What = new(2, "another unit") });

        Assert.Empty((await floor.FileAsync(job)).Dealings.Photos);
        Assert.NotNull(await new ReadPhoto(under.Shop).RunAsync(file, Cancel));
    }

    private static AddPhoto Add(ShopFloor floor) => new(floor.Ledger, TimeProvider.System);
}
