using Slowglow.Workshop.Photos;

namespace Slowglow.Tests.Workshop.Photos;

public sealed class PhotoCheckTests
{
    // One black point each; PNG as every encoder writes it, JPEG segments by ITU-T T.81 annex B, WebP header by RFC 9649.
    private const string Png =
        "89504E470D0A1A0A0000000D49484452000000010000000108060000001F15C4890000000D49444154789C636460F8CF500F0003860180"
        + "5A347D6B0000000049454E44AE426082";
    private const string Jpeg = "FFD8FFE000044A46FFC0000B080001000101011100FFDA0008010100003F0000FFD9";
    private const string WebP = "524946460E000000574542505650382002000000AABB";

    [Theory]
    [InlineData(Png, PhotoKind.Png)]
    [InlineData(Jpeg, PhotoKind.Jpeg)]
    [InlineData(Jpeg + "0000001866747970", PhotoKind.Jpeg)]
    [InlineData(WebP, PhotoKind.WebP)]
    public void Picture_is_known_by_what_is_in_it(string content, PhotoKind kind)
    {
        var looked = PhotoCheck.Look("notes.txt", Convert.FromHexString(content));

        Assert.Equal((kind, null), (looked.Kind, looked.Wrong));
    }

    [Theory]
    [InlineData("", "is not a photograph")]
    [InlineData("25504446", "is not a photograph")]
    [InlineData("3C7376673E3C2F7376673E", "is not a photograph")]
    [InlineData("524946460E0000005741564566", "is not a photograph")]
    [InlineData("0000001866747970686569630000", "HEIC")]
    [InlineData("FFD8FF", "cut short")]
    [InlineData("FFD8FFE000044A46FFC0000B080001000101011100FFDA0008010100003F00", "cut short")]
    [InlineData("FFD8FFE000044A46FFDA0008010100003F0000FFD9", "cut short")]
    [InlineData("FFD8FFE0FFFF4A46", "cut short")]
    [InlineData("89504E470D0A1A0A0000000D494844520000000100000001", "cut short")]
    [InlineData("52494646FF00000057454250565038200200", "cut short")]
    public void Anything_else_gets_a_sentence(string content, string said)
    {
        var (kind, wrong) = PhotoCheck.Look("amp.jpg", Convert.FromHexString(content));

        Assert.Null(kind);
        Assert.Contains("amp.jpg", wrong!.Text, StringComparison.Ordinal);
        Assert.Contains(said, wrong.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Forty_megabytes_are_too_much_before_any_byte_is_read()
    {
        Assert.Equal("\"amp.jpg\" has 40 MB, too much for a photograph.", PhotoCheck.LookSize("amp.jpg", 40_000_000)!.Text);
        Assert.Null(PhotoCheck.LookSize("amp.jpg", PhotoCheck.MostBytes));
    }

    [Fact]
    public void No_bytes_at_all_throw()
    {
        var random = new Random(4711);
        byte[][] heads = [Convert.FromHexString(Png)[..12], [0xFF, 0xD8, 0xFF], [.. "RIFF\0\0\0\0WEBP"u8]];
        for (var i = 0; i < 3000; i++)
        {
            var content = new byte[random.Next(0, 200)];
            random.NextBytes(content);
            byte[] whole = [.. heads[i % heads.Length], .. content];
            var (kind, wrong) = PhotoCheck.Look("x", whole);
            Assert.True(kind is null != wrong is null);
        }
    }
}
