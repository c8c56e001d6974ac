using PdfSharp.Drawing;

namespace Slowglow.Documents.Drawing;

/// <summary>Sizes of letters, in points.</summary>
internal static class Face
{
    public static XFont Body { get; } = Make(9.5, XFontStyleEx.Regular);
    public static XFont Bold { get; } = Make(9.5, XFontStyleEx.Bold);
    public static XFont Small { get; } = Make(7.8, XFontStyleEx.Regular);
    public static XFont Label { get; } = Make(7.2, XFontStyleEx.Bold);
    public static XFont Section { get; } = Make(11.5, XFontStyleEx.Bold);
    public static XFont Title { get; } = Make(20, XFontStyleEx.Bold);
    public static XFont Quote { get; } = Make(10.5, XFontStyleEx.Italic);

    public static XBrush Ink { get; } = new XSolidBrush(XColor.FromArgb(38, 30, 22));
    public static XBrush Faint { get; } = new XSolidBrush(XColor.FromArgb(110, 96, 78));
    public static XBrush Glow { get; } = new XSolidBrush(XColor.FromArgb(143, 74, 0));
    public static XPen Hair { get; } = new(XColor.FromArgb(205, 190, 165), 0.6);
    public static XPen Strong { get; } = new(XColor.FromArgb(143, 74, 0), 1.4);

    public static XFont Make(double size, XFontStyleEx style)
    {
        ShippedFonts.Use();
        return new(ShippedFonts.Family, size, style);
    }
}
