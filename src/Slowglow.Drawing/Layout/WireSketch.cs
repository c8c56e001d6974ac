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
                if (At(new(x, y)) is { } net && own.All(p => p.Net != net))
                {
                    count++;
                }
            }
        }

        return count;
    }

    public double Cost(string net, Cell from, Heading? leaving, Cell to, Heading arriving, IReadOnlyList<Rect> self) =>
        Ways(from, to).Min(w => Cost(net, w, leaving, arriving, self));

    public void Draw(string net, Cell from, Heading leaving, Cell to, Heading arriving)
    {
        var best = Ways(from, to).MinBy(w => Cost(net, w, leaving, arriving, []))!;
        foreach (var cell in Cells(best))
        {
            if (Bed.Index(cell) is var i && i >= 0)
            {
                wires[i] = net;
                used.Add(i);
            }
        }
    }

    private string? At(Cell cell) => Bed.Index(cell) is var i && i >= 0 ? wires[i] : null;

    private static IEnumerable<Cell[]> Ways(Cell from, Cell to)
    {
        if (from.X == to.X || from.Y == to.Y)
        {
            yield return [from, to];
        }
        else
        {
            yield return [from, new(from.X, to.Y), to];
            yield return [from, new(to.X, from.Y), to];
            var (x, y) = ((from.X + to.X) / 2, (from.Y + to.Y) / 2);
            yield return [from, new(x, from.Y), new(x, to.Y), to];
            yield return [from, new(from.X, y), new(to.X, y), to];
        }
    }

    private double Cost(string net, Cell[] way, Heading? leaving, Heading arriving, IReadOnlyList<Rect> self)
    {
        double cost = Bend * (way.Length - 2);
        if (leaving is { } heading && Direction(way[0], way[1]) is { } first)
        {
            cost +=
                first == heading ? 0
                : first == heading.Opposite() ? 3 * Obstacle
                : Bend;
        }

        if (Direction(way[^1], way[^2]) is { } last)
        {
            cost +=
                last == arriving ? 0
                : last == arriving.Opposite() ? 3 * Obstacle
                : Bend;
        }

        for (var i = 1; i < way.Length; i++)
        {
            cost += RunCost(net, way[i - 1], way[i], i < way.Length - 1, self);
        }

        return cost;
    }

    /// <summary>Of the cells after the first, the last among them only where the way goes on.</summary>
    private double RunCost(string net, Cell from, Cell to, bool withLast, IReadOnlyList<Rect> self)
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
            if (self.Any(r => r.Holds(cell)) || bed.IsTaken(cell))
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
