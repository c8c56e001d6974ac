using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Layout;
using Slowglow.Drawing.Strips;
using Slowglow.Drawing.Symbols;
using Slowglow.Drawing.Wiring;

namespace Slowglow.Drawing.Svg;

/// <summary>Writes a layout with its figures as one SVG document.</summary>
internal sealed class SvgDrawing(DrawingLayout layout, DrawingFigures figures, bool standsAlone)
{
    private const int Margin = 3;
    private const int Head = 4;

    private readonly SvgText svg = new();

    public string Write()
    {
        var (boxes, homeless) = PlaceFigures();
        var outline =
            layout.Strips.Count == 0
                ? new Rect(0, 0, 20, 4)
                : layout.Strips.Select(s => s.Outline).Aggregate((a, b) => a.With(b));
        var notes = Foot.Lines(figures, homeless, outline.Width);
        var width = 10 * (Math.Max(outline.Right, 50) + (2 * Margin));
        var height = 10 * (outline.Bottom + Head + (2 * Margin)) + (13 * notes.Count) + 10;
        svg.Open(
            "svg",
            ("xmlns", "http://www.w3.org/2000/svg"),
            ("class", "slowglow-drawing"),
            ("viewBox", $"{-10 * Margin} {-10 * (Margin + Head)} {width} {height}"),
            ("width", $"{width}"),
            ("height", $"{height}"),
            ("role", "group"),
            ("aria-label", $"Service drawing, {layout.Sheet.Unit}")
        );
        svg.Element("title", $"Service drawing, {layout.Sheet.Unit}");
        if (standsAlone)
        {
            svg.Open("style");
            svg.Raw(Look.Alone(isTall: height > width));
            svg.Close("style");
        }

        svg.Empty(
            "rect",
            ("class", "sheet"),
            ("x", $"{-10 * Margin}"),
            ("y", $"{-10 * (Margin + Head)}"),
            ("width", $"{width}"),
            ("height", $"{height}")
        );
        var maker = layout.Sheet.Maker is { } name ? $", {name}" : "";
        svg.Element("text", layout.Sheet.Unit + maker, ("class", "title"), ("x", "0"), ("y", $"{-10 * (Head - 1)}"));
        foreach (var strip in layout.Strips)
        {
            Draw(strip);
        }

        boxes.ForEach(Draw);
        for (var i = 0; i < notes.Count; i++)
        {
            svg.Element(
                "text",
                notes[i],
                ("class", "note"),
                ("x", "0"),
                ("y", $"{(10 * (outline.Bottom + Margin)) + (13 * (i + 1))}")
            );
        }

        svg.Close("svg");
        return svg.ToString();
    }

    private (List<FigureBox> Boxes, List<PointFigure> Homeless) PlaceFigures()
    {
        var placer = new FigurePlacer(layout);
        var named = layout.Strips.SelectMany(s => s.Wired.Named).ToHashSet();
        List<FigureBox> boxes = [];
        List<PointFigure> homeless = [];
        var wanted = figures.Points.ToList();
        if (figures.Next is { } next)
        {
            wanted.AddRange(
                next.Nets.Where(n => wanted.All(w => w.Net != n))
                    .Select(n => new PointFigure(n, n, double.NaN, double.NaN, double.NaN))
            );
        }

        foreach (
            var figure in wanted.OrderBy(f =>
                IsNext(f) ? 0
                : f.Measured is null ? 2
                : 1
            )
        )
        {
            var lines = FigureWords.Lines(
                figure,
                named.Contains(figure.Net),
                figures.Next is { } mark && mark.Nets.FirstOrDefault() == figure.Net ? mark : null
            );
            var must = figure.Measured is not null || IsNext(figure);
            if ((placer.Place(figure, lines) ?? (lines.Count > 0 ? placer.PlaceApart(figure, lines, must) : null)) is { } box)
            {
                boxes.Add(box);
            }
            else
            {
                homeless.Add(figure);
            }
        }

        return (boxes, homeless);
    }

    private bool IsNext(PointFigure figure) => figures.Next?.Nets.Contains(figure.Net) == true;

    private void Draw(Strip strip)
    {
        svg.Open("g", ("class", strip.IsSupply ? "strip supply" : "strip stages"));
        foreach (var run in strip.Wired.Runs)
        {
            var rail = strip.Wired.Rails.Any(r => r.Net == run.Net && run.Corners[0].Y == r.Y && run.Corners[^1].Y == r.Y);
            svg.Empty("path", ("class", rail ? "wire rail" : "wire"), ("d", Signs.WirePath(run.Corners)));
        }

        foreach (var dot in Dots.Of(strip.Wired))
        {
            svg.Empty("circle", ("class", "dot"), ("cx", Ink.Px(dot.X)), ("cy", Ink.Px(dot.Y)), ("r", "2.6"));
        }

        foreach (var rail in strip.Wired.Rails)
        {
            var at = $"{Ink.Px(rail.Left)} {Ink.Px(rail.Y)}";
            svg.Element(
                "text",
                rail.Net,
                ("class", "railname"),
                ("data-at", at),
                ("x", Ink.Px(rail.NameRoom.Right + 0.5)),
                ("y", Ink.Px(rail.Y + 0.35)),
                ("text-anchor", "end")
            );
        }

        strip.Wired.Tags.ToList().ForEach(t => Signs.Draw(svg, t));
        foreach (var placed in strip.Wired.Placed)
        {
            if (placed.Symbol is TagSymbol)
            {
                Signs.Draw(svg, placed);
            }
            else
            {
                Draw(placed);
            }
        }

        svg.Close("g");
    }

    private void Draw(Placed placed)
    {
        var share = placed.Symbol.Part is { } part ? figures.Suspicion.GetValueOrDefault(part.Designator) : 0;
        var title = PartWords.Title(placed.Symbol, share);
        svg.Open(
            "g",
            ("class", "part"),
            ("data-part", placed.Symbol.Part?.Designator ?? "MAINS"),
            ("tabindex", "0"),
            ("role", "button")
        );
        svg.Element("title", title);
        var room = placed.Stance.Rooms.Take(2).Select(r => r.Moved(placed.Origin)).Aggregate((a, b) => a.With(b));
        Box("hold", room, 0.5);
        if (share >= 0.005)
        {
            Box(
                "shade",
                room,
                0.4,
                ("fill-opacity", SvgText.Number(0.1 + (0.45 * share))),
                ("stroke-width", SvgText.Number(0.6 + (2.4 * share)))
            );
        }

        new Ink(svg, placed.Origin, placed.Stance.Pose).Draw(placed.Symbol.Strokes);
        foreach (var pin in placed.Pins)
        {
            svg.Empty(
                "circle",
                ("class", "pin"),
                ("data-pin", pin.Pin.Name),
                ("cx", Ink.Px(pin.At.X)),
                ("cy", Ink.Px(pin.At.Y)),
                ("r", "1")
            );
            Number(pin);
        }

        foreach (var label in placed.Labels)
        {
            svg.Element(
                "text",
                label.Text,
                ("class", label.IsName ? "name" : "value"),
                ("x", Ink.Px(label.X)),
                ("y", Ink.Px(label.Y)),
                ("text-anchor", label.Anchor)
            );
        }

        placed.Attachments.ToList().ForEach(a => Signs.Draw(svg, a));
        svg.Close("g");
    }

    private void Box(string name, Rect room, double by, params ReadOnlySpan<(string Name, string Value)> more) =>
        svg.Empty(
            "rect",
            [
                ("class", name),
                ("x", Ink.Px(room.Left - by)),
                ("y", Ink.Px(room.Top - by)),
                ("width", Ink.Px(room.Width + (2 * by))),
                ("height", Ink.Px(room.Height + (2 * by))),
                ("rx", "4"),
                .. more,
            ]
        );

    /// <summary>A pin's number stands beside its lead, towards the body.</summary>
    private void Number(PlacedPin pin)
    {
        if (pin.Pin.Number.Length == 0)
        {
            return;
        }

        var (x, y, anchor) = pin.Out switch
        {
            Heading.Up => (pin.At.X + 0.3, pin.At.Y + 0.75, "start"),
            Heading.Down => (pin.At.X + 0.3, pin.At.Y - 0.15, "start"),
            Heading.Left => (pin.At.X + 0.75, pin.At.Y - 0.3, "end"),
            _ => (pin.At.X - 0.75, pin.At.Y - 0.3, "start"),
        };
        svg.Element("text", pin.Pin.Number, ("class", "number"), ("x", Ink.Px(x)), ("y", Ink.Px(y)), ("text-anchor", anchor));
    }

    private void Draw(FigureBox box)
    {
        var sentence = FigureWords.Sentence(box.Figure);
        svg.Open("g", ("class", "point"), ("data-point", box.Figure.Where), ("tabindex", "0"), ("role", "button"));
        svg.Element("title", sentence);
        svg.Empty("circle", ("class", "hold"), ("cx", Ink.Px(box.Spot.X)), ("cy", Ink.Px(box.Spot.Y)), ("r", "9"));
        if (box.Leader is { } end)
        {
            svg.Empty(
                "path",
                ("class", "leader"),
                ("d", $"M{Ink.Px(box.Spot.X)} {Ink.Px(box.Spot.Y)}L{Ink.Px(end.X)} {Ink.Px(end.Y)}")
            );
        }

        svg.Empty("circle", ("class", "spot"), ("cx", Ink.Px(box.Spot.X)), ("cy", Ink.Px(box.Spot.Y)), ("r", "2.4"));
        if (IsNext(box.Figure))
        {
            svg.Empty("circle", ("class", "ring"), ("cx", Ink.Px(box.Spot.X)), ("cy", Ink.Px(box.Spot.Y)), ("r", "7"));
        }

        for (var i = 0; i < box.Lines.Count; i++)
        {
            svg.Element(
                "text",
                box.Lines[i].Text,
                ("class", box.Lines[i].Class),
                ("x", Ink.Px(box.Left)),
                ("y", Ink.Px(box.Top + i)),
                ("text-anchor", box.Anchor)
            );
        }

        svg.Close("g");
    }
}
