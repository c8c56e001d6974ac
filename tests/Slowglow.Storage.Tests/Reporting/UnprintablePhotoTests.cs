using System.Text;
using Slowglow.Bench.Papers;
using Slowglow.Bench.Photographs;
using Slowglow.Documents;
using Slowglow.Storage.Tests.Counter;
using Slowglow.Storage.Tests.Photographs;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests.Reporting;

public sealed class UnprintablePhotoTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>A WebP file by its frame (RFC 9649, section 2.4) beside a PNG.</summary>
    [Fact]
    public async Task Report_is_printed_with_the_photographs_that_can_be_and_a_sentence_for_the_other()
    {
        byte[] webP = [.. "RIFF"u8, 14, 0, 0, 0, .. "WEBPVP8 "u8, 2, 0, 0, 0, 0, 0];
        await using var under = await SqliteUnderTest.StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync(
            ShopFloor.Booking with
            {
                Photos = [new(PhotoContract.Picture, "front"), new(webP, "back")],
            }
        );
        string[] files = [.. (await floor.FileAsync(job)).Dealings.Photos.Select(p => p.File)];
        var alone = await ReportAsync(under, floor, job, files[..1]);
        var both = await ReportAsync(under, floor, job, files);

        Assert.True(Pictures(alone) > 0);
        Assert.Equal(Pictures(alone), Pictures(both));
        Assert.True(both.Length > alone.Length);
        Assert.False(PaperPicture.CanBePrinted(webP));
    }

    [Theory]
    [InlineData("back", "Photograph 2 (\"back\") could not be printed")]
    [InlineData("", "Photograph 2 could not be printed")]
    public void Sentence_says_which_one_and_that_the_shop_has_it(string caption, string begins)
    {
        var said = PaperPicture.NotPrinted(caption, 2);

        Assert.StartsWith(begins, said, StringComparison.Ordinal);
        Assert.EndsWith("The shop has it.", said, StringComparison.Ordinal);
    }

    private static async Task<string> ReportAsync(IShopUnderTest under, ShopFloor floor, int job, string[] photos)
    {
        await floor.DoAsync(job, new ReportWritten { What = new("choke open", "", "new choke", "", [], 6, photos) });
        var read = new ReadJobFile(under.Shop, TimeProvider.System);
        var print = new PrintPaper(read, new ReadPhoto(under.Shop), TimeProvider.System);
        var pdf = (await print.RunAsync(job, "report", "", Cancel)).Value!.Pdf;
        Assert.StartsWith("%PDF", Encoding.Latin1.GetString(pdf), StringComparison.Ordinal);
        return Encoding.Latin1.GetString(pdf);
    }

    /// <summary>A picture with an alpha channel is two objects.</summary>
    private static int Pictures(string pdf) => pdf.Split("/Subtype/Image").Length - 1;
}
