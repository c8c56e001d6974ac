using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Layout;

/// <summary>Puts a symbol's words beside it, and says what room they take.</summary>
internal static class Labels
{
    private const double LineHeight = 1.15;

    public static (IReadOnlyList<Label> Labels, IReadOnlyList<Rect> Room) Of(Symbol symbol, Pose pose)
    {
        var words = symbol.Words;
        if (words.Count == 0)
        {
            return ([], []);
        }

        var body = symbol.Body;
        body = pose.Apply(body);
        if (pose.IsTurned)
        {
            return Lying(words, body);
        }

        var right = (symbol.Label == LabelSide.Behind) == pose.Mirrored;
        return symbol.Label switch
        {
            LabelSide.Above => Stacked(words, body, true),
            LabelSide.Corner => Under(words, body, body.Bottom + 0.95),
            LabelSide.Beside => Beside(words, body, !pose.Mirrored),
            _ => Beside(words, body, right),
        };
    }

    /// <summary>Name over the body, the rest under it.</summary>
    private static (IReadOnlyList<Label>, IReadOnlyList<Rect>) Lying(IReadOnlyList<string> words, Rect body)
    {
        var (x, half) = ((body.Left + body.Right) / 2.0, body.Height == 0 ? 0.3 : 0.6);
        List<Label> labels = [new(x, -half - 0.25, words[0], true, "middle")];
        List<Rect> room = [Centred(words[0], x, -1, -1)];
        for (var i = 1; i < words.Count; i++)
        {
            labels.Add(new(x, half + 1.05 + ((i - 1) * LineHeight), words[i], false, "middle"));
            room.Add(Centred(words[i], x, i, i));
        }

        return (labels, room);
    }

    private static (IReadOnlyList<Label>, IReadOnlyList<Rect>) Beside(IReadOnlyList<string> words, Rect body, bool right)
    {
        var edge = body.Width == 0 ? 0.6 : Math.Min(body.Right, -body.Left) + (body.Right > 1 ? 0.5 : 0.1);
        var middle = (body.Top + body.Bottom) / 2.0;
        var top = middle - ((words.Count - 1) * LineHeight / 2) + 0.4;
        var width = words.Max(TextSize.Cells);
        var start = (int)Math.Ceiling(edge);
        var (first, last) = ((int)Math.Floor(top - 0.8), (int)Math.Ceiling(top + ((words.Count - 1) * LineHeight)));
        var room = right ? new Rect(start, first, start + width, last) : new Rect(-start - width, first, -start, last);
        return (
            [
                .. words.Select(
                    (w, i) => new Label(right ? edge : -edge, top + (i * LineHeight), w, i == 0, right ? "start" : "end")
                ),
            ],
            [room]
        );
    }

    private static (IReadOnlyList<Label>, IReadOnlyList<Rect>) Stacked(IReadOnlyList<string> words, Rect body, bool above)
    {
        var x = (body.Left + body.Right) / 2.0;
        var first = body.Top - 0.45 - ((words.Count - 1) * LineHeight);
        var rows = (int)Math.Ceiling(words.Count * LineHeight);
        var text = words.MaxBy(w => w.Length)!;
        return (
            [.. words.Select((w, i) => new Label(x, first + (i * LineHeight), w, i == 0, "middle"))],
            above ? [Centred(text, x, body.Top - rows, body.Top - 1)] : []
        );
    }

    private static (IReadOnlyList<Label>, IReadOnlyList<Rect>) Under(IReadOnlyList<string> words, Rect body, double first)
    {
        var text = words.MaxBy(w => w.Length)!;
        var last = first + ((words.Count - 1) * LineHeight);
        return (
            [.. words.Select((w, i) => new Label(1.2, first + (i * LineHeight), w, i == 0, "start"))],
            [new Rect(1, (int)Math.Floor(first - 0.5), TextSize.Cells(text) + 1, (int)Math.Ceiling(last - 0.1))]
        );
    }

    private static Rect Centred(string text, double x, int top, int bottom)
    {
        var half = TextSize.Cells(text) / 2.0;
        return new((int)Math.Floor(x - half + 0.3), top, (int)Math.Ceiling(x + half - 0.3), bottom);
    }
}
