using PdfSharp.Drawing;
using QRCoder;

namespace Slowglow.Documents.Drawing;

/// <summary>A QR code as squares.</summary>
internal static class Modules
{
    /// <summary>Dark = true, with the quiet zone of four modules around it (ISO/IEC 18004).</summary>
    public static IReadOnlyList<IReadOnlyList<bool>> Of(string text)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        return [.. code.ModuleMatrix.Select(row => (IReadOnlyList<bool>)[.. row.Cast<bool>()])];
    }

    public static void Draw(XGraphics page, IReadOnlyList<IReadOnlyList<bool>> modules, double left, double top, double side)
    {
        var size = side / modules.Count;
        for (var y = 0; y < modules.Count; y++)
        {
            for (var x = 0; x < modules[y].Count; x++)
            {
                if (modules[y][x])
                {
                    // A hair wider than a module, so that no printer leaves white between two.
                    page.DrawRectangle(XBrushes.Black, left + x * size, top + y * size, size + 0.05, size + 0.05);
                }
            }
        }
    }
}
