using System.Buffers.Binary;

namespace Slowglow.Workshop.Photos;

/// <summary>
/// The first and last bytes of picture files. JPEG: ITU-T T.81 annex B; PNG: ISO/IEC 15948 clause 5; WebP: RFC 9649 section 2; HEIC: the brand of
/// ISO/IEC 14496-12 clause 4.3.
/// </summary>
internal static class PictureBytes
{
    private const int StartOfScan = 0xDA;
    private static readonly byte[] Png = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];
    private static readonly byte[] EndOfImage = [0xFF, 0xD9];

    /// <summary>By its first bytes; null when it begins like no picture.</summary>
    public static PhotoKind? KindOf(ReadOnlySpan<byte> content) =>
        content.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF]) ? PhotoKind.Jpeg
        : content.StartsWith(Png) ? PhotoKind.Png
        : content.Length > 12 && content.StartsWith("RIFF"u8) && content[8..].StartsWith("WEBP"u8) ? PhotoKind.WebP
        : null;

    public static bool IsHeic(ReadOnlySpan<byte> content) =>
        content.Length > 12
        && content[4..].StartsWith("ftyp"u8)
        && (content[8..].StartsWith("he"u8) || content[8..].StartsWith("mif1"u8) || content[8..].StartsWith("msf1"u8));

    /// <summary>True when it has a size and goes on to its end. What a camera hangs on behind the end does not matter.</summary>
    public static bool IsWhole(PhotoKind kind, ReadOnlySpan<byte> content) =>
        kind switch
        {
            PhotoKind.Jpeg => ScanOf(content) is { } scan && content[scan..].IndexOf(EndOfImage) >= 0,
            PhotoKind.Png => content.Length > 24
                && content[12..].StartsWith("IHDR"u8)
                && BinaryPrimitives.ReadUInt32BigEndian(content[16..]) > 0
                && BinaryPrimitives.ReadUInt32BigEndian(content[20..]) > 0
                && content.LastIndexOf("IEND"u8) > 24,
            _ => content.Length > 20 && BinaryPrimitives.ReadUInt32LittleEndian(content[4..]) + 8L <= content.Length,
        };

    /// <summary>Where the first scan begins, behind a frame header with a size; null when the segments do not lead there.</summary>
    private static int? ScanOf(ReadOnlySpan<byte> content)
    {
        var sized = false;
        var at = 2;
        while (at + 4 <= content.Length)
        {
            if (content[at] != 0xFF)
            {
                return null;
            }

            int marker = content[at + 1];
            if (marker == 0xFF)
            {
                at++;
                continue;
            }

            if (marker == StartOfScan)
            {
                return sized ? at : null;
            }

            sized = sized || IsSizedFrame(marker, content[at..]);
            at += 2 + BinaryPrimitives.ReadUInt16BigEndian(content[(at + 2)..]);
        }

        return null;
    }

    /// <summary>C4, C8 and CC are tables and a reserved code, not frames.</summary>
    private static bool IsSizedFrame(int marker, ReadOnlySpan<byte> segment) =>
        marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC)
        && segment.Length >= 9
        && BinaryPrimitives.ReadUInt16BigEndian(segment[7..]) > 0;
}
