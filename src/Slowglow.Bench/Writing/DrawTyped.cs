using Slowglow.Drawing;
using Slowglow.Sheets;

namespace Slowglow.Bench.Writing;

/// <summary>
/// The drawing of a text as it stands, without figures: it has to follow the typing, so nothing is solved for it, and where only values changed
/// since one of the last drawings that one gets the new values. For use from several threads.
/// </summary>
public sealed class DrawTyped
{
    /// <summary>Benches that may type at once.</summary>
    private const int Remembered = 6;

    private static readonly Dictionary<string, double> Unsolved = [];
    private readonly Lock gate = new();
    private readonly List<DrawingLayout> last = [];

    /// <summary>Null where the text cannot be drawn because it has errors.</summary>
    public string? Run(string text, DrawingStyle style, CancellationToken cancel = default)
    {
        var sheet = SheetReader.Read(text);
        if (sheet.Value is not { Parts.Count: > 0 } read || sheet.HasErrors)
        {
            return null;
        }

        var layout = Revalued(read, style) ?? ServiceDrawing.LayOut(read, Unsolved, style, cancel);
        Remember(layout);
        return ServiceDrawing.Write(layout, DrawingFigures.None);
    }

    private DrawingLayout? Revalued(Sheet sheet, DrawingStyle style)
    {
        DrawingLayout[] known;
        lock (gate)
        {
            known = [.. last];
        }

        return known
            .Where(l => l.Style == style)
            .Select(l => ServiceDrawing.Revalue(l, sheet))
            .FirstOrDefault(l => l is not null);
    }

    private void Remember(DrawingLayout layout)
    {
        lock (gate)
        {
            last.Insert(0, layout);
            last.RemoveRange(Math.Min(Remembered, last.Count), Math.Max(0, last.Count - Remembered));
        }
    }
}
