using System.Buffers.Binary;

namespace Slowglow.Workshop.Photos;

/// <summary>How far a photograph has to be turned to stand upright: cameras write down how they were held (Exif 2.32, tag 274, orientation).</summary>
public static class PictureTurn
{
    private const int Exif = 0xE1;
    private const int StartOfScan = 0xDA;
    private const int Orientation = 274;

    /// <summary>Degrees clockwise: 0, 90, 180 or 270; 0 where nothing is written. Mirrored pictures are only turned.</summary>
    public static int Of(ReadOnlySpan<byte> content)
    {
        if (!content.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8]))
        {
            return 0;
        }

        var at = 2;
        while (at + 4 < content.Length && content[at] == 0xFF && content[at + 1] != StartOfScan)
        {
            var length = BinaryPrimitives.ReadUInt16BigEndian(content[(at + 2)..]);
            if (content[at + 1] == Exif && at + 2 + length <= content.Length)
            {
                return Degrees(Tag(content.Slice(at + 4, Math.Max(0, length - 2))));
            }

            at += 2 + length;
        }

        return 0;
    }

    private static int Degrees(int orientation) =>
        orientation switch
        {
            3 or 4 => 180,
            5 or 6 => 90,
            7 or 8 => 270,
            _ => 0,
        };

    /// <summary>Value of the tag in the first directory of a TIFF header behind "Exif"; 0 when there is none.</summary>
    private static int Tag(ReadOnlySpan<byte> segment)
    {
        if (segment.Length < 14 || !segment.StartsWith("Exif\0\0"u8))
        {
            return 0;
        }

        var tiff = segment[6..];
        var little = tiff[0] == (byte)'I';
        var first = (int)Math.Min(Long(tiff[4..], little), int.MaxValue);
        if (first + 2 > tiff.Length || first < 0)
        {
            return 0;
        }

        for (var i = 0; i < Short(tiff[first..], little); i++)
        {
            var entry = first + 2 + 12 * i;
            if (entry + 12 > tiff.Length)
            {
                return 0;
            }

            if (Short(tiff[entry..], little) == Orientation)
            {
                return Short(tiff[(entry + 8)..], little);
            }
        }

        return 0;
    }

    private static int Short(ReadOnlySpan<byte> at, bool little) =>
        little ? BinaryPrimitives.ReadUInt16LittleEndian(at) : BinaryPrimitives.ReadUInt16BigEndian(at);

    private static uint Long(ReadOnlySpan<byte> at, bool little) =>
        little ? BinaryPrimitives.ReadUInt32LittleEndian(at) : BinaryPrimitives.ReadUInt32BigEndian(at);
}
