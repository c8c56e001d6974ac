using PdfSharp.Fonts;

namespace Slowglow.Documents.Drawing;

/// <summary>The DejaVu faces that come with the program: papers look alike on every machine.</summary>
internal sealed class ShippedFonts : IFontResolver
{
    public const string Family = "DejaVu Sans Condensed";
    private static readonly Lock Gate = new();

    private ShippedFonts() { }

    /// <summary>Makes the faces known, once.</summary>
    public static void Use()
    {
        lock (Gate)
        {
            GlobalFontSettings.FontResolver ??= new ShippedFonts();
        }
    }

    public FontResolverInfo? ResolveTypeface(string familyName, bool isBold, bool isItalic) =>
        new(
            isBold ? "DejaVuSansCondensed-Bold"
            : isItalic ? "DejaVuSansCondensed-Oblique"
            : "DejaVuSansCondensed"
        );

    public byte[]? GetFont(string faceName)
    {
        using var stream = typeof(ShippedFonts).Assembly.GetManifestResourceStream($"fonts/{faceName}.ttf")!;
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
