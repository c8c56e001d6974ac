using Slowglow.Drawing.Grid;

namespace Slowglow.Drawing.Layout;

/// <summary>Where wires are likely to run while symbols are still being placed: straight, or with one or two corners.</summary>
internal sealed class WireSketch(Bed bed)
{
    private const double Bend = 1.6;
    private const double Obstacle = 6;
    private const double Crossing = 4;

    private readonly string?[] wires = new string?[Bed.Size];
    private readonly List<int> used = [];

    public void Clear()
    {
        used.ForEach(i => wires[i] = null);
        used.Clear();
    }

    /// <summary>Cells of a room that other nets' sketched wires use.</summary>
    public int Covered(Rect room, IReadOnlyList<PlacedPin> own)
    {
        var count = 0;
        for (var y = room.Top; y <= room.Bottom; y++)
        {
            for (var x = room.Left; x <= room.Right; x++)
            {
                if (At(new(x, y)) is { } net && !IsOf(own, net))
                {
                    count++;
                }
            }
        }

        return count;
    }

    /// <summary>What the best way costs, or something above <paramref name="limit"/> where every way costs more.</summary>
    /// <param name="net">Its own wires are no obstacle.</param>
    /// <param name="from">Where the wire begins.</param>
    /// <param name="leaving">The way out of the pin there.</param>
    /// <param name="to">Where it ends.</param>
    /// <param name="arriving">The way out of the pin there.</param>
    /// <param name="self">Bodies that would stand with the first pin.</param>
    /// <param name="limit">A way is followed no further once it costs more.</param>
    public double Cost(string net, Cell from, Heading leaving, Cell to, Heading arriving, Rect[] self, double limit)
    {
        var least = double.PositiveInfinity;
        Span<Cell> corners = stackalloc Cell[4];
        for (var shape = 0; shape < Shapes(from, to); shape++)
        {
            var way = Way(shape, from, to, corners);
            least = Math.Min(least, Cost(net, way, leaving, arriving, self, Math.Min(least, limit)));
        }

        return least;
    }

    public void Draw(string net, Cell from, Heading leaving, Cell to, Heading arriving)
    {
        var (best, least) = (0, double.PositiveInfinity);
        Span<Cell> corners = stackalloc Cell[4];
        for (var shape = 0; shape < Shapes(from, to); shape++)
        {
            if (Cost(net, Way(shape, from, to, corners), leaving, arriving, [], least) is var cost && cost < least)
            {
                (best, least) = (shape, cost);
            }
        }

        foreach (var cell in Cells([.. Way(best, from, to, corners)]))
        {
            if (Bed.Index(cell) is var i && i >= 0)
            {
                wires[i] = net;
                used.Add(i);
            }
        }
    }

    private static bool IsOf(IReadOnlyList<PlacedPin> own, string net)
    {
        for (var i = 0; i < own.Count; i++)
        {
            if (own[i].Net == net)
            {
                return true;
            }
        }

        return false;
    }

    private string? At(Cell cell) => Bed.Index(cell) is var i && i >= 0 ? wires[i] : null;

    private static int Shapes(Cell from, Cell to) => from.X == to.X || from.Y == to.Y ? 1 : 4;

    /// <summary>One of the shapes a wire may have: straight; one corner, either way about; two corners, either way about.</summary>
    private static ReadOnlySpan<Cell> Way(int shape, Cell from, Cell to, Span<Cell> corners)
    {
        corners[0] = from;
        if (from.X == to.X || from.Y == to.Y)
        {
            corners[1] = to;
            return corners[..2];
        }

        if (shape < 2)
        {
            (corners[1], corners[2]) = (shape == 0 ? new Cell(from.X, to.Y) : new Cell(to.X, from.Y), to);
            return corners[..3];
        }

        var (x, y) = ((from.X + to.X) / 2, (from.Y + to.Y) / 2);
        (corners[1], corners[2]) =
            shape == 2 ? (new Cell(x, from.Y), new Cell(x, to.Y)) : (new Cell(from.X, y), new Cell(to.X, y));
        corners[3] = to;
        return corners;
    }

    private double Cost(string net, ReadOnlySpan<Cell> way, Heading leaving, Heading arriving, Rect[] self, double limit)
    {
        var cost = Bend * (way.Length - 2);
        if (Direction(way[0], way[1]) is { } first)
        {
            cost +=
                first == leaving ? 0
                : first == leaving.Opposite() ? 3 * Obstacle
                : Bend;
        }

        if (Direction(way[^1], way[^2]) is { } last)
        {
            cost +=
                last == arriving ? 0
                : last == arriving.Opposite() ? 3 * Obstacle
                : Bend;
        }

        for (var i = 1; i < way.Length && cost <= limit; i++)
        {
            cost += RunCost(net, way[i - 1], way[i], i < way.Length - 1, self);
        }

        return cost;
    }

    /// <summary>Of the cells after the first, the last among them only where the way goes on.</summary>
    private double RunCost(string net, Cell from, Cell to, bool withLast, Rect[] self)
    {
        double cost = 0;
        var step = new Cell(Math.Sign(to.X - from.X), Math.Sign(to.Y - from.Y));
        for (var cell = from; cell != to; )
        {
            cell += step;
            if (cell == to && !withLast)
            {
                break;
            }

            cost += 1;
            if (bed.IsTaken(cell) || IsIn(self, cell))
            {
                cost += Obstacle;
            }
            else if (At(cell) is { } other && other != net)
            {
                cost += Crossing;
            }
        }

        return cost;
    }

    private static bool IsIn(Rect[] rooms, Cell cell)
    {
        foreach (var room in rooms)
        {
            if (room.Holds(cell))
            {
                return true;
            }
        }

        return false;
    }

    private static Heading? Direction(Cell from, Cell to) =>
        from == to ? null
        : from.X == to.X ? (to.Y < from.Y ? Heading.Up : Heading.Down)
        : to.X < from.X ? Heading.Left
        : Heading.Right;

    /// <summary>Cells strictly between the ends.</summary>
    private static IEnumerable<Cell> Cells(Cell[] way)
    {
        for (var i = 1; i < way.Length; i++)
        {
            var (from, to) = (way[i - 1], way[i]);
            var step = new Cell(Math.Sign(to.X - from.X), Math.Sign(to.Y - from.Y));
            for (var cell = from + step; cell != to; cell += step)
            {
                yield return cell;
            }

            if (i < way.Length - 1)
            {
                yield return to;
            }
        }
    }
}
