using System.Globalization;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Slowglow.Workshop.Papers;

namespace Slowglow.Documents.Drawing;

/// <summary>Lays text and tables down A4 pages, one below the other, with a foot on each page. Lengths in points.</summary>
internal sealed class Flow : IDisposable
{
    private const double Margin = 54;
    private const double FootRoom = 52;
    private const double Leading = 1.32;
    private readonly PdfDocument document = new();
    private readonly string foot;
    private XGraphics? graphics;
    private PdfPage page = null!;

    /// <param name="foot">Printed at the bottom of every page.</param>
    /// <param name="format">How days and figures are written.</param>
    public Flow(string title, string foot, PaperFormat format)
    {
        this.foot = foot;
        Format = format;
        document.Info.Title = title;
        document.Info.Creator = "Slowglow";
        NewPage();
    }

    public PaperFormat Format { get; }

    public double Y { get; private set; }

    public double Width => page.Width.Point - 2 * Margin;

    private XGraphics Page => graphics!;

    public byte[] Finish()
    {
        graphics!.Dispose();
        graphics = null;
        for (var i = 0; i < document.PageCount; i++)
        {
            using var over = XGraphics.FromPdfPage(document.Pages[i], XGraphicsPdfPageOptions.Append);
            var y = page.Height.Point - 34;
            over.DrawLine(Face.Hair, Margin, y - 10, page.Width.Point - Margin, y - 10);
            over.DrawString(foot, Face.Small, Face.Faint, new XPoint(Margin, y));
            var number = string.Create(CultureInfo.InvariantCulture, $"{i + 1} / {document.PageCount}");
            over.DrawString(number, Face.Small, Face.Faint, new XRect(Margin, y - 8, Width, 10), XStringFormats.TopRight);
        }

        using var bytes = new MemoryStream();
        document.Save(bytes, false);
        return bytes.ToArray();
    }

    public void Dispose()
    {
        graphics?.Dispose();
        document.Dispose();
    }

    public void Space(double points) => Y += points;

    /// <summary>Wrapped text in the whole width, or from <paramref name="left"/> in <paramref name="width"/>.</summary>
    public void Text(string text, XFont? font = null, XBrush? brush = null, double left = 0, double? width = null)
    {
        font ??= Face.Body;
        foreach (var line in Wrap(text, font, width ?? Width - left))
        {
            Need(font.Size * Leading);
            Page.DrawString(line, font, brush ?? Face.Ink, new XPoint(Margin + left, Y + font.Size));
            Y += font.Size * Leading;
        }
    }

    /// <summary>Begins a new page when so much does not fit on this one.</summary>
    public void Keep(double height) => Need(height);

    /// <summary>At most so wide and so high, with a hair line around it.</summary>
    public void Picture(ReadyPicture picture, double left, double wide, double high)
    {
        var (width, height) = (picture.WidthIn(wide, high), picture.HeightIn(wide, high));
        picture.Draw(Page, Margin + left, Y, wide, high);
        Page.DrawRectangle(Face.Hair, Margin + left, Y, width, height);
        Y += height + 3;
    }

    /// <summary>The same without a line around it, and with room below.</summary>
    public void Mark(ReadyPicture picture, double left, double wide, double high)
    {
        picture.Draw(Page, Margin + left, Y, wide, high);
        Y += picture.HeightIn(wide, high) + 6;
    }

    /// <param name="with">Points below the head that have to fit on the same page.</param>
    public void Section(string text, double with = 30)
    {
        Need(30 + with);
        Space(12);
        Text(text, Face.Section, Face.Glow);
        Page.DrawLine(Face.Hair, Margin, Y + 1, Margin + Width, Y + 1);
        Space(6);
    }

    /// <summary>Several texts side by side, each in a column of the same width; goes on below the longest.</summary>
    public void Beside(params IReadOnlyList<Action> columns)
    {
        var (top, lowest) = (Y, Y);
        foreach (var column in columns)
        {
            Y = top;
            column();
            lowest = Math.Max(lowest, Y);
        }

        Y = lowest;
    }

    /// <summary>Rows under heads that are said again on every page.</summary>
    public void Table(IReadOnlyList<Column> columns, IReadOnlyList<IReadOnlyList<string>> rows, int boldFrom = int.MaxValue)
    {
        Need(40);
        Head(columns);
        for (var i = 0; i < rows.Count; i++)
        {
            var font = i >= boldFrom ? Face.Bold : Face.Body;
            var cells = columns.Select((c, n) => Wrap(rows[i][n], font, Wide(columns, c) - 8)).ToList();
            var height = cells.Max(c => Math.Max(1, c.Count)) * font.Size * Leading + 5;
            if (Need(height))
            {
                Head(columns);
            }

            Row(columns, cells, font);
            Y += height;
            Page.DrawLine(Face.Hair, Margin, Y - 1, Margin + Width, Y - 1);
        }
    }

    /// <summary>A name and a figure, both at the right edge.</summary>
    public void Pair(string name, string figure, XFont font)
    {
        var height = font.Size * Leading + 2;
        Need(height);
        Page.DrawString(name, font, Face.Ink, new XRect(Margin, Y, Width * 0.8 - 8, height), XStringFormats.TopRight);
        Page.DrawString(figure, font, Face.Ink, new XRect(Margin, Y, Width - 8, height), XStringFormats.TopRight);
        Y += height;
    }

    private void Row(IReadOnlyList<Column> columns, List<List<string>> cells, XFont font)
    {
        var left = Margin;
        for (var n = 0; n < columns.Count; n++)
        {
            var wide = Wide(columns, columns[n]);
            for (var k = 0; k < cells[n].Count; k++)
            {
                var box = new XRect(left, Y + 2 + k * font.Size * Leading, wide - 8, font.Size * Leading);
                Page.DrawString(
                    cells[n][k],
                    font,
                    Face.Ink,
                    box,
                    columns[n].Right ? XStringFormats.TopRight : XStringFormats.TopLeft
                );
            }

            left += wide;
        }
    }

    private void Head(IReadOnlyList<Column> columns)
    {
        var left = Margin;
        foreach (var column in columns)
        {
            var wide = Wide(columns, column);
            var box = new XRect(left, Y, wide - 8, 10);
            Page.DrawString(
                column.Head.ToUpperInvariant(),
                Face.Label,
                Face.Faint,
                box,
                column.Right ? XStringFormats.TopRight : XStringFormats.TopLeft
            );
            left += wide;
        }

        Y += 12;
        Page.DrawLine(Face.Strong, Margin, Y, Margin + Width, Y);
        Y += 2;
    }

    private double Wide(IReadOnlyList<Column> columns, Column column) => Width * column.Share / columns.Sum(c => c.Share);

    /// <summary>True when a new page was begun.</summary>
    private bool Need(double height)
    {
        if (Y + height <= page.Height.Point - FootRoom)
        {
            return false;
        }

        NewPage();
        return true;
    }

    private void NewPage()
    {
        graphics?.Dispose();
        page = document.AddPage();
        page.Size = PdfSharp.PageSize.A4;
        graphics = XGraphics.FromPdfPage(page);
        Y = Margin;
    }

    private List<string> Wrap(string text, XFont font, double width) =>
        Wrapping.Lines(text, s => Page.MeasureString(s, font).Width, width);
}
