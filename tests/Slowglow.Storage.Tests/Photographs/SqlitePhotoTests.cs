using Slowglow.Bench.Keeping;
using Slowglow.Bench.Photographs;
using Slowglow.Storage.Sqlite;
using Slowglow.Storage.Tests.Counter;

namespace Slowglow.Storage.Tests.Photographs;

public sealed class SqlitePhotoTests : PhotoContract
{
    [Fact]
    public async Task Backup_takes_photographs_with_it_and_brings_them_back()
    {
        var cancel = TestContext.Current.CancellationToken;
        await using var under = await SqliteUnderTest.StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync(ShopFloor.Booking with { Photos = [new(Picture, "front")] });
        var copies = new SqliteCopies(under.FilePath);
        var copy = (await new BackupShop(copies).RunAsync(under.FilePath + ".backup", cancel)).Value!;
        Assert.Equal(1, copy.Rows.Photos);
        File.Delete(under.FilePath);

        Assert.Empty((await new RestoreShop(copies).RunAsync(copy.Path, cancel)).Findings);

        var file = (await floor.FileAsync(job)).Dealings.Photos[0].File;
        Assert.Equal(Picture, (await new ReadPhoto(under.Shop).RunAsync(file, cancel))!.Content);
    }

    protected override async Task<IShopUnderTest> StartAsync() => await SqliteUnderTest.StartAsync();
}
