using System.Text;
using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Svg;

/// <summary>Draws strokes at a place and in a pose. Everything is written in absolute pixels; words are never turned.</summary>
internal sealed class Ink(SvgText svg, Cell origin, Pose pose)
{
    public static string Px(double units) => SvgText.Number(units * TextSize.Unit);

    public void Draw(IEnumerable<Stroke> strokes)
    {
        foreach (var stroke in strokes)
        {
            Draw(stroke);
        }
    }

    private void Draw(Stroke stroke)
    {
        switch (stroke)
        {
            case Line line:
                svg.Empty("path", ("class", Class(line.Fill)), ("d", Path(line.Points) + (line.Closed ? "Z" : "")));
                break;
            case Curve curve:
                svg.Empty("path", ("class", "stroke"), ("d", Bends(curve.Points)));
                break;
            case Ring ring:
                var (x, y) = At(ring.X, ring.Y);
                svg.Empty("circle", ("class", Class(ring.Fill)), ("cx", Px(x)), ("cy", Px(y)), ("r", Px(ring.Radius)));
                break;
            case Writing writing:
                var (tx, ty) = At(writing.X, writing.Y);
                svg.Element(
                    "text",
                    writing.Text,
                    ("class", writing.Class),
                    ("x", Px(tx)),
                    ("y", Px(ty)),
                    ("text-anchor", writing.Anchor)
                );
                break;
        }
    }

    private (double X, double Y) At(double x, double y)
    {
        var (px, py) = pose.Apply(x, y);
        return (px + origin.X, py + origin.Y);
    }

    private static string Class(Fill fill) =>
        fill switch
        {
            Fill.Paper => "stroke paper",
            Fill.Ink => "stroke solid",
            _ => "stroke",
        };

    private string Path(IReadOnlyList<(double X, double Y)> points)
    {
        StringBuilder path = new();
        foreach (var (x, y) in points.Select(p => At(p.X, p.Y)))
        {
            path.Append(path.Length == 0 ? 'M' : 'L').Append(Px(x)).Append(' ').Append(Px(y));
        }

        return path.ToString();
    }

    private string Bends(IReadOnlyList<(double X, double Y)> points)
    {
        var placed = points.Select(p => At(p.X, p.Y)).Select(p => $"{Px(p.X)} {Px(p.Y)}").ToArray();
        StringBuilder path = new("M" + placed[0]);
        for (var i = 1; i + 2 < placed.Length; i += 3)
        {
            path.Append($"C{placed[i]} {placed[i + 1]} {placed[i + 2]}");
        }

        return path.ToString();
    }
}
