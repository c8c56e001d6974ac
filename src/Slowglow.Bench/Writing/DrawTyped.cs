using Slowglow.Drawing;
using Slowglow.Sheets;

namespace Slowglow.Bench.Writing;

/// <summary>The drawing of a text as it stands, without figures: it has to follow the typing, so nothing is solved for it.</summary>
public sealed class DrawTyped
{
    private static readonly Dictionary<string, double> Unsolved = [];

    /// <summary>Null where the text cannot be drawn because it has errors.</summary>
    public string? Run(string text, CancellationToken cancel = default)
    {
        var sheet = SheetReader.Read(text);
        if (sheet.Value is not { Parts.Count: > 0 } read || sheet.HasErrors)
        {
            return null;
        }

        var layout = ServiceDrawing.LayOut(read, Unsolved, new DrawingStyle(), cancel);
        return ServiceDrawing.Write(layout, DrawingFigures.None);
    }
}
