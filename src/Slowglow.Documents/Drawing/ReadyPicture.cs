using PdfSharp.Drawing;
using Slowglow.Workshop.Photos;

namespace Slowglow.Documents.Drawing;

/// <summary>A picture that can be put on a page, upright as it was taken.</summary>
internal sealed class ReadyPicture : IDisposable
{
    private readonly XImage image;
    private readonly int turn;

    private ReadyPicture(XImage image, int turn) => (this.image, this.turn) = (image, turn);

    private bool IsOnSide => turn is 90 or 270;

    private double Aspect =>
        IsOnSide ? (double)image.PixelHeight / image.PixelWidth : (double)image.PixelWidth / image.PixelHeight;

    /// <summary>Null for a file of a kind that cannot be printed.</summary>
    public static ReadyPicture? Read(byte[] content)
    {
        try
        {
            var stream = new MemoryStream(content, 0, content.Length, false, true);
            return new(XImage.FromStream(stream), PictureTurn.Of(content));
        }
        catch (Exception e) when (e is InvalidOperationException or NotSupportedException or IOException or ArgumentException)
        {
            return null;
        }
    }

    /// <summary>Points that it is high, at most so wide and so high.</summary>
    public double HeightIn(double wide, double high) => Math.Min(high, wide / Aspect);

    /// <summary>Points that it is wide, at most so wide and so high.</summary>
    public double WidthIn(double wide, double high) => HeightIn(wide, high) * Aspect;

    public void Draw(XGraphics page, double left, double top, double wide, double high)
    {
        var (height, width) = (HeightIn(wide, high), WidthIn(wide, high));
        var state = page.Save();
        page.RotateAtTransform(turn, new XPoint(left + width / 2, top + height / 2));
        var (w, h) = IsOnSide ? (height, width) : (width, height);
        page.DrawImage(image, left + (width - w) / 2, top + (height - h) / 2, w, h);
        page.Restore(state);
    }

    public void Dispose() => image.Dispose();
}
