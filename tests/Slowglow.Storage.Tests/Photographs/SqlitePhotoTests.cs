using Slowglow.Bench.Jobs;
using Slowglow.Bench.Keeping;
using Slowglow.Bench.Papers;
using Slowglow.Bench.Photographs;
using Slowglow.Storage.Sqlite;
using Slowglow.Storage.Tests.Counter;

namespace Slowglow.Storage.Tests.Photographs;

public sealed class SqlitePhotoTests : PhotoContract
{
    [Fact]
    public async Task Backup_takes_photographs_and_the_logo_with_it_and_brings_them_back()
    {
        var cancel = TestContext.Current.CancellationToken;
        await using var under = await SqliteUnderTest.StartAsync();
        var floor = new ShopFloor(under.Shop);
        byte[] photo = [.. Picture[..^12], 1, 2, 3, .. Picture[^12..]];
        var job = await floor.BookAsync(ShopFloor.Booking with { Photos = [new(photo, "front")] });
        var choose = new ChooseLogo(new SettingsWriter(under.Shop, floor.News), TimeProvider.System);
        Assert.Empty(await choose.RunAsync("wordmark.png", Picture, cancel));
        await new IssueInvoice(floor.Ledger).RunAsync(job, [ShopFloor.Line(100)], cancel: cancel);
        var invoice = await InvoiceAsync(under, job);
        var copies = new SqliteCopies(under.FilePath);
        var copy = (await new BackupShop(copies).RunAsync(under.FilePath + ".backup", cancel)).Value!;
        Assert.Equal(2, copy.Rows.Photos);
        File.Delete(under.FilePath);

        Assert.Empty((await new RestoreShop(copies).RunAsync(copy.Path, cancel)).Findings);

        var read = new ReadPhoto(under.Shop);
        var file = (await floor.FileAsync(job)).Dealings.Photos[0].File;
        Assert.Equal(photo, (await read.RunAsync(file, cancel))!.Content);
        var logo = (await new ReadSettings(under.Shop).RunAsync(cancel)).Rules!.Party.Logo;
        Assert.Equal(Picture, (await read.RunAsync(logo, cancel))!.Content);
        Assert.Equal(invoice, await InvoiceAsync(under, job));
    }

    /// <summary>Objects of the PDF that are pictures: the drawing itself carries the moment it was made.</summary>
    private static async Task<int> InvoiceAsync(IShopUnderTest under, int job)
    {
        var read = new ReadJobFile(under.Shop, TimeProvider.System);
        var print = new PrintPaper(read, new ReadPhoto(under.Shop), TimeProvider.System);
        var paper = await print.RunAsync(job, "invoice-1", "", TestContext.Current.CancellationToken);
        var pictures = System.Text.Encoding.Latin1.GetString(paper.Value!.Pdf).Split("/Subtype/Image").Length - 1;
        Assert.True(pictures > 0);
        return pictures;
    }

    protected override async Task<IShopUnderTest> StartAsync() => await SqliteUnderTest.StartAsync();
}
