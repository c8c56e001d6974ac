using Slowglow.Workshop.People;

namespace Slowglow.Tests.Workshop.People;

public sealed class PinHashTests
{
    [Fact]
    public void Pin_fits_its_own_hash_alone_and_never_looks_the_same_twice()
    {
        var (one, two) = (PinHash.Of("4711"), PinHash.Of("4711"));

        Assert.NotEqual(one, two);
        Assert.DoesNotContain("4711", one, StringComparison.Ordinal);
        Assert.True(PinHash.Fits("4711", one) && PinHash.Fits("4711", two));
        Assert.False(PinHash.Fits("4712", one));
        Assert.False(PinHash.Fits("", one));
    }

    /// <summary>PBKDF2-HMAC-SHA-256 of "passwd" and "salt", 1 round: RFC 7914 section 11, its first 32 bytes.</summary>
    [Fact]
    public void Hash_is_the_function_of_the_standard()
    {
        var published = Convert.FromHexString("55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc");
        Assert.True(PinHash.Fits("passwd", $"1.{Convert.ToBase64String("salt"u8)}.{Convert.ToBase64String(published)}"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("1.2")]
    [InlineData("0.AAAA.AAAA")]
    [InlineData("1.not base64!.AAAA")]
    [InlineData("99999999999.AAAA.AAAA")]
    public void What_is_no_hash_fits_nothing(string stored) => Assert.False(PinHash.Fits("", stored));
}
