using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Layout;
using Slowglow.Drawing.Strips;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Svg;

/// <summary>Finds room beside a net's wires for its figures, where nothing else is.</summary>
internal sealed class FigurePlacer
{
    private const double LetterWidth = 0.56;
    private const double LineHeight = 1.0;
    private const int Farthest = 30;
    private const int Near = 6;

    /// <summary>Grid units between the baseline of a label and the row of a figure that just stands clear of it.</summary>
    private const double AboveBaseline = 1.3;
    private const double BelowBaseline = 0.55;

    private readonly HashSet<Cell> taken = [];
    private readonly Dictionary<string, List<Cell>> cells = [];
    private readonly Dictionary<string, List<Cell>> pins = [];
    private readonly Dictionary<Cell, string> netAt = [];
    private readonly HashSet<Cell> crossings = [];
    private readonly DrawingLayout layout;

    public FigurePlacer(DrawingLayout layout)
    {
        this.layout = layout;
        foreach (var strip in layout.Strips)
        {
            Take(strip);
        }
    }

    /// <summary>The box for the figure, or null when there is no room anywhere along its net.</summary>
    public FigureBox? Place(PointFigure figure, IReadOnlyList<FigureLine> lines)
    {
        var width = (int)Math.Ceiling(lines.Select(l => l.Text.Length).DefaultIfEmpty(0).Max() * LetterWidth);
        var height = (int)Math.Ceiling(lines.Count * LineHeight);
        foreach (var spot in Spots(figure))
        {
            foreach (var (room, anchor) in Rooms(spot, width, height))
            {
                if (IsFree(room))
                {
                    Take(room);
                    taken.Add(spot);
                    var left = anchor == "end" ? room.Right + 0.2 : room.Left - 0.2;
                    return new(figure, lines, spot, left, room.Top + 0.35, anchor);
                }
            }
        }

        return null;
    }

    /// <summary>Further off, with a fine line to it; how far depends on whether it must be on the drawing, because somebody measured it or is about to.</summary>
    public FigureBox? PlaceApart(PointFigure figure, IReadOnlyList<FigureLine> lines, bool must)
    {
        var width = (int)Math.Ceiling(lines.Max(l => l.Text.Length) * LetterWidth);
        Cell[] spots = [.. Spots(figure).Take(12)];
        for (var far = 2; far <= (must ? Farthest : Near); far++)
        {
            foreach (var spot in spots)
            {
                foreach (
                    var by in new Cell[]
                    {
                        new(far, -far),
                        new(far, far),
                        new(-far, -far),
                        new(-far, far),
                        new(0, -far),
                        new(0, far),
                        new(far, 0),
                        new(-far, 0),
                    }
                )
                {
                    var left = by.X < 0 ? spot.X + by.X - width : spot.X + by.X + 1;
                    var top = by.Y < 0 ? spot.Y + by.Y - lines.Count : spot.Y + by.Y;
                    var room = new Rect(left, top, left + width - 1, top + lines.Count - 1);
                    if (IsFree(room) && (must || LeadsClear(spot, by)))
                    {
                        Take(room);
                        taken.Add(spot);
                        var end = new Cell(by.X < 0 ? room.Right : room.Left, Math.Clamp(spot.Y, room.Top, room.Bottom));
                        return new(figure, lines, spot, room.Left - 0.2, room.Top + 0.35, "start", end);
                    }
                }
            }
        }

        return null;
    }

    /// <summary>Along the wires of the net, nearest to the pin that names the point first; a rail in the supply.</summary>
    private IEnumerable<Cell> Spots(PointFigure figure)
    {
        var named = layout
            .Strips.SelectMany(s => s.Wired.Placed)
            .SelectMany(p => p.Pins)
            .Where(p => p.Pin.Name == figure.Where)
            .Select(p => (Cell?)p.At)
            .FirstOrDefault();
        var all = cells.GetValueOrDefault(figure.Net) ?? pins.GetValueOrDefault(figure.Net) ?? [];
        var alone = all.Where(c => !crossings.Contains(c)).Distinct();
        return layout.Roles.IsRail(figure.Net)
            ? alone.Reverse().OrderByDescending(c => c.Y / 40)
            : alone.OrderBy(c => named?.DistanceTo(c) ?? 0);
    }

    private static IEnumerable<(Rect Room, string Anchor)> Rooms(Cell spot, int width, int height)
    {
        var (x, y) = (spot.X, spot.Y);
        yield return (new(x + 1, y - height, x + width, y - 1), "start");
        yield return (new(x + 1, y + 1, x + width, y + height), "start");
        yield return (new(x - width, y - height, x - 1, y - 1), "end");
        yield return (new(x - width, y + 1, x - 1, y + height), "end");
        yield return (new(x + 1, y - (height / 2), x + width, y - (height / 2) + height - 1), "start");
        yield return (new(x - width, y - (height / 2), x - 1, y - (height / 2) + height - 1), "end");
    }

    /// <summary>Nothing under the fine line: on a wire it would be read as a part of it.</summary>
    private bool LeadsClear(Cell spot, Cell by)
    {
        var (dx, dy) = (Math.Sign(by.X), Math.Sign(by.Y));
        var far = Math.Max(Math.Abs(by.X), Math.Abs(by.Y));
        return Enumerable.Range(1, far - 1).All(k => !taken.Contains(new(spot.X + (k * dx), spot.Y + (k * dy))));
    }

    private bool IsFree(Rect room)
    {
        for (var y = room.Top; y <= room.Bottom; y++)
        {
            for (var x = room.Left; x <= room.Right; x++)
            {
                if (taken.Contains(new(x, y)))
                {
                    return false;
                }
            }
        }

        return room.Left >= 0;
    }

    private void Take(Strip strip)
    {
        foreach (var room in strip.Wired.Placed.SelectMany(p => p.Rooms).Concat(strip.Wired.Tags.SelectMany(t => t.Room)))
        {
            Take(room);
        }

        foreach (var label in strip.Wired.Placed.SelectMany(p => p.Labels))
        {
            Take(RoomOf(label));
        }

        strip.Wired.Rails.ToList().ForEach(r => Take(r.NameRoom));
        foreach (var pin in strip.Wired.Placed.SelectMany(p => p.Pins))
        {
            taken.Add(pin.At);
            Listed(pins, pin.Net).Add(pin.At);
        }

        foreach (var run in strip.Wired.Runs)
        {
            foreach (var cell in run.Cells())
            {
                taken.Add(cell);
                Listed(cells, run.Net).Add(cell);

                // A spot must not sit where another net's wire crosses.
                if (!netAt.TryAdd(cell, run.Net) && netAt[cell] != run.Net)
                {
                    crossings.Add(cell);
                }
            }
        }
    }

    /// <summary>Rows in which a line of figures would touch the letters of a label, at its true height and width.</summary>
    private static Rect RoomOf(Label label)
    {
        var width = TextSize.Pixels(label.Text) / TextSize.Unit;
        var left = label.Anchor switch
        {
            "middle" => label.X - (width / 2),
            "end" => label.X - width,
            _ => label.X,
        };
        return new(
            (int)Math.Floor(left),
            (int)Math.Ceiling(label.Y - AboveBaseline),
            (int)Math.Ceiling(left + width),
            (int)Math.Floor(label.Y + BelowBaseline)
        );
    }

    private void Take(Rect room)
    {
        for (var y = room.Top; y <= room.Bottom; y++)
        {
            for (var x = room.Left; x <= room.Right; x++)
            {
                taken.Add(new(x, y));
            }
        }
    }

    private static List<Cell> Listed(Dictionary<string, List<Cell>> lists, string key)
    {
        if (!lists.TryGetValue(key, out var list))
        {
            lists[key] = list = [];
        }

        return list;
    }
}
