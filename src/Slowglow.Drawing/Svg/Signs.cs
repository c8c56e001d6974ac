using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Layout;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Svg;

/// <summary>Draws chassis signs and tags.</summary>
internal static class Signs
{
    public static void Draw(SvgText svg, Attachment attachment)
    {
        svg.Empty("path", ("class", "lead"), ("d", WirePath(attachment.Lead)));
        var end = attachment.Lead[^1];
        if (attachment.Tie == PinTie.Chassis)
        {
            Chassis(svg, end);
        }
        else
        {
            Tag(svg, attachment.Lead[0], end, attachment.Heading, attachment.Net);
        }
    }

    /// <summary>A tag that is a symbol of its own: its wire ends at its pin.</summary>
    public static void Draw(SvgText svg, Placed tag)
    {
        var pin = tag.Pins[0];
        var heading = pin.Out.Opposite();
        svg.Empty("path", ("class", "lead"), ("d", WirePath([pin.At, pin.At + heading.Step()])));
        Tag(svg, pin.At, pin.At + heading.Step(), heading, pin.Net);
    }

    public static string WirePath(IReadOnlyList<Cell> corners)
    {
        var path = $"M{Ink.Px(corners[0].X)} {Ink.Px(corners[0].Y)}";
        for (var i = 1; i < corners.Count; i++)
        {
            path += corners[i].Y == corners[i - 1].Y ? $"H{Ink.Px(corners[i].X)}" : $"V{Ink.Px(corners[i].Y)}";
        }

        return path;
    }

    /// <summary>Chassis, IEC 60617 02-15-04.</summary>
    private static void Chassis(SvgText svg, Cell at)
    {
        var (x, y) = (at.X, at.Y);
        var d =
            $"M{Ink.Px(x - 0.9)} {Ink.Px(y)}H{Ink.Px(x + 0.9)}"
            + $"M{Ink.Px(x - 0.55)} {Ink.Px(y + 0.4)}H{Ink.Px(x + 0.55)}M{Ink.Px(x - 0.2)} {Ink.Px(y + 0.8)}H{Ink.Px(x + 0.2)}";
        svg.Empty("path", ("class", "stroke chassis"), ("data-at", $"{Ink.Px(x)} {Ink.Px(y)}"), ("d", d));
    }

    private static void Tag(SvgText svg, Cell pin, Cell end, Heading heading, string net)
    {
        var width = TextSize.Pixels(net) / TextSize.Unit;
        var (x, y, anchor) = heading switch
        {
            Heading.Right => (end.X + 0.45, end.Y + 0.35, "start"),
            Heading.Left => (end.X - 0.45, end.Y + 0.35, "end"),
            Heading.Up => (end.X, end.Y - 0.45, "middle"),
            _ => (end.X, end.Y + 1.15, "middle"),
        };
        var head = heading switch
        {
            Heading.Right =>
                $"M{Ink.Px(end.X + 0.3)} {Ink.Px(end.Y - 0.5)}L{Ink.Px(end.X)} {Ink.Px(end.Y)}L{Ink.Px(end.X + 0.3)} {Ink.Px(end.Y + 0.5)}",
            Heading.Left =>
                $"M{Ink.Px(end.X - 0.3)} {Ink.Px(end.Y - 0.5)}L{Ink.Px(end.X)} {Ink.Px(end.Y)}L{Ink.Px(end.X - 0.3)} {Ink.Px(end.Y + 0.5)}",
            _ => $"M{Ink.Px(end.X - (width / 2))} {Ink.Px(end.Y)}H{Ink.Px(end.X + (width / 2))}",
        };
        svg.Empty("path", ("class", "stroke"), ("d", head));
        svg.Element(
            "text",
            net,
            ("class", "tagname"),
            ("data-at", $"{Ink.Px(pin.X)} {Ink.Px(pin.Y)}"),
            ("x", Ink.Px(x)),
            ("y", Ink.Px(y)),
            ("text-anchor", anchor)
        );
    }
}
