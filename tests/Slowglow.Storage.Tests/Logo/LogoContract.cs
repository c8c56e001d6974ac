using System.Text;
using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Keeping;
using Slowglow.Bench.Papers;
using Slowglow.Bench.Photographs;
using Slowglow.Storage.Tests.Counter;
using Slowglow.Storage.Tests.Photographs;

namespace Slowglow.Storage.Tests.Logo;

/// <summary>The shop's logo on its papers, on every kind of database.</summary>
public abstract class LogoContract
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    protected abstract Task<IShopUnderTest> StartAsync();

    [Fact]
    public async Task Logo_is_printed_from_then_on_and_papers_issued_keep_theirs()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync();
        var invoice = new IssueInvoice(floor.Ledger);
        await invoice.RunAsync(job, [ShopFloor.Line(100)], cancel: Cancel);
        Assert.False(await HasPictureAsync(under, job, "receipt"));

        Assert.Empty(await Choose(under, floor).RunAsync("wordmark.png", PhotoContract.Picture, Cancel));
        await invoice.RunAsync(job, [ShopFloor.Line(50)], cancel: Cancel);

        Assert.False(await HasPictureAsync(under, job, "invoice-1"));
        Assert.True(await HasPictureAsync(under, job, "invoice-2"));
        Assert.True(await HasPictureAsync(under, job, "receipt"));
        Assert.True((await new ReadSettings(under.Reopened()).RunAsync(Cancel)).Rules!.AreExamples);
        Assert.Empty(await Choose(under, floor).RunAsync("", null, Cancel));
        Assert.True(await HasPictureAsync(under, job, "invoice-2"));
        Assert.False(await HasPictureAsync(under, job, "receipt"));
    }

    [Fact]
    public async Task Logo_is_in_an_export()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        Assert.Empty(await Choose(under, floor).RunAsync("wordmark.png", PhotoContract.Picture, Cancel));
        var folder = Directory.CreateTempSubdirectory("slowglow-export-").FullName;

        var files = (await new ExportShop(under.Shop, TimeProvider.System).RunAsync(folder, Cancel)).Value!;

        var logo = (await new ReadSettings(under.Shop).RunAsync(Cancel)).Rules!.Party.Logo;
        Assert.Equal(PhotoContract.Picture, await File.ReadAllBytesAsync(files.Single(f => Path.GetFileName(f) == logo), Cancel));
        var shop = await File.ReadAllTextAsync(files.Single(f => Path.GetFileName(f) == "shop.json"), Cancel);
        Assert.Contains(logo, shop, StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task What_cannot_be_printed_is_refused_and_the_logo_stays()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        Assert.Empty(await Choose(under, floor).RunAsync("wordmark.png", PhotoContract.Picture, Cancel));
        byte[] large = [.. PhotoContract.Picture[..^12], .. new byte[ChooseLogo.MostBytes], .. PhotoContract.Picture[^12..]];
        // A whole WebP file by its frame, RFC 9649 section 2.4: no paper takes it.
        byte[] webP = [.. "RIFF"u8, 14, 0, 0, 0, .. "WEBPVP8 "u8, 2, 0, 0, 0, 0, 0];
        foreach (
            var (name, content, said) in new[]
            {
                ("list.png", Encoding.UTF8.GetBytes("solder"), "is not a photograph"),
                ("half.png", PhotoContract.Picture[..30], "cut short or damaged"),
                ("poster.png", large, "is too large for a logo"),
                ("new.webp", webP, "cannot be printed"),
            }
        )
        {
            var wrong = Assert.Single(await Choose(under, floor).RunAsync(name, content, Cancel));
            Assert.Contains(said, wrong.Text, StringComparison.Ordinal);
        }

        Assert.NotEmpty((await new ReadSettings(under.Shop).RunAsync(Cancel)).Rules!.Party.Logo);
        await using var database = under.Shop.CreateDbContext();
        Assert.Equal(1, await database.Photos.CountAsync(Cancel));
    }

    private static ChooseLogo Choose(IShopUnderTest under, ShopFloor floor) =>
        new(new SettingsWriter(under.Shop, floor.News), TimeProvider.System);

    private static async Task<bool> HasPictureAsync(IShopUnderTest under, int job, string paper)
    {
        var print = new PrintPaper(
            new ReadJobFile(under.Shop, TimeProvider.System),
            new ReadPhoto(under.Shop),
            TimeProvider.System
        );
        var printed = await print.RunAsync(job, paper, "http://bench.example", Cancel);
        return Encoding.Latin1.GetString(printed.Value!.Pdf).Contains("/Subtype/Image", StringComparison.Ordinal);
    }
}
