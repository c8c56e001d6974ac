using Slowglow.Workshop.Photos;

namespace Slowglow.Tests.Workshop.Photos;

/// <summary>Orientation as Exif 2.32 section 4.6.4 A numbers it: 1 upright, 3 on its head, 6 turned left, 8 turned right (from memory of the standard).</summary>
public sealed class PictureTurnTests
{
    [Theory]
    [InlineData(1, 0)]
    [InlineData(3, 180)]
    [InlineData(6, 90)]
    [InlineData(8, 270)]
    [InlineData(0, 0)]
    [InlineData(99, 0)]
    public void Orientation_is_read_in_either_byte_order(int orientation, int degrees)
    {
        Assert.Equal(degrees, PictureTurn.Of(Jpeg(orientation, little: true)));
        Assert.Equal(degrees, PictureTurn.Of(Jpeg(orientation, little: false)));
    }

    [Fact]
    public void Picture_cut_anywhere_is_upright_and_nothing_breaks()
    {
        var whole = Jpeg(6, little: true);
        for (var length = 0; length < whole.Length - 4; length++)
        {
            Assert.Equal(0, PictureTurn.Of(whole.AsSpan(0, length)));
        }
    }

    private static byte[] Jpeg(int orientation, bool little)
    {
        byte[] Short(int value) => little ? [(byte)value, (byte)(value >> 8)] : [(byte)(value >> 8), (byte)value];
        byte[] Long(int value) => little ? [.. Short(value), 0, 0] : [0, 0, .. Short(value)];
        byte[] tiff =
        [
            .. little ? "II"u8 : "MM"u8,
            .. Short(42),
            .. Long(8),
            .. Short(1),
            .. Short(274),
            .. Short(3),
            .. Long(1),
            .. Short(orientation),
            0,
            0,
        ];
        byte[] segment = [.. "Exif\0\0"u8, .. tiff];
        return [0xFF, 0xD8, 0xFF, 0xE1, 0, (byte)(segment.Length + 2), .. segment, 0xFF, 0xDA, 0, 2];
    }
}
