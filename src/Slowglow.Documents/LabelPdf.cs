using System.Globalization;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Slowglow.Documents.Drawing;
using Slowglow.Workshop.Jobs;

namespace Slowglow.Documents;

/// <summary>The label on the unit: 89 x 36 mm, its code opens the job.</summary>
public static class LabelPdf
{
    private const double Side = 92;

    /// <param name="address">What the code says: the address of the job's page.</param>
    public static byte[] Draw(Job job, string address)
    {
        using var document = new PdfDocument();
        document.Info.Title = $"Label of job {job.Number}";
        var page = document.AddPage();
        page.Width = XUnit.FromMillimeter(89);
        page.Height = XUnit.FromMillimeter(36);
        using (var graphics = XGraphics.FromPdfPage(page))
        {
            Modules.Draw(graphics, Modules.Of(address), 4, 5, Side);
            var width = page.Width.Point - Side - 14;
            var big = Face.Make(26, XFontStyleEx.Bold);
            graphics.DrawString(job.Number.ToString(CultureInfo.InvariantCulture), big, XBrushes.Black, new XPoint(Side + 6, 30));
            var y = 46.0;
            string[] lines =
            [
                job.Unit.Title,
                job.Unit.Serial,
                job.Customer.Name,
                job.BookedIn.ToString("d MMM yyyy", CultureInfo.InvariantCulture),
            ];
            foreach (var line in lines.Where(l => l.Length > 0).SelectMany(l => Short(graphics, l, width)).Take(5))
            {
                graphics.DrawString(line, Face.Body, XBrushes.Black, new XPoint(Side + 6, y));
                y += 12;
            }
        }

        using var bytes = new MemoryStream();
        document.Save(bytes, false);
        return bytes.ToArray();
    }

    private static IEnumerable<string> Short(XGraphics graphics, string line, double width) =>
        Wrapping.Lines(line, s => graphics.MeasureString(s, Face.Body).Width, width).Take(2);
}
