using Slowglow.Drawing.Grid;

namespace Slowglow.Drawing.Layout;

/// <summary>What is taken on a strip's grid: by symbols, by the way out of pins, by the straight ways to rails.</summary>
internal sealed class Bed
{
    private const int Columns = 720;
    private const int Rows = 480;
    private static readonly Cell Middle = new(240, 240);

    /// <summary>Cells that there are.</summary>
    public const int Size = Columns * Rows;

    private readonly short[] taken = new short[Columns * Rows];
    private readonly short[] pins = new short[Columns * Rows];
    private readonly short[] exits = new short[Columns * Rows];
    private readonly short[] ways = new short[Columns * Rows];

    public void Add(Placed placed) => Count(placed, 1);

    public void Remove(Placed placed) => Count(placed, -1);

    public bool IsTaken(Cell cell) => Index(cell) is var i && (i < 0 || taken[i] > 0);

    public bool IsPin(Cell cell) => Index(cell) is var i && i >= 0 && pins[i] > 0;

    /// <summary>True when the stance fits there with a free row or column all about it, and its pins can be reached.</summary>
    public bool Fits(Stance stance, Cell origin)
    {
        foreach (var room in stance.Rooms)
        {
            if (!IsFree(room.Moved(origin)))
            {
                return false;
            }
        }

        foreach (var pin in stance.Pins)
        {
            var (at, exit) = (pin.At + origin, pin.At + origin + pin.Out.Step());
            var (i, j) = (Index(at), Index(exit));
            if (i < 0 || j < 0 || taken[i] > 0 || pins[i] > 0 || exits[i] > 0 || ways[i] > 0 || taken[j] > 0 || pins[j] > 0)
            {
                return false;
            }

            if (pin.Tie == PinTie.RailLine && !IsWayFree(at, pin.Out))
            {
                return false;
            }
        }

        return true;
    }

    private bool IsFree(Rect room)
    {
        for (var y = room.Top - 1; y <= room.Bottom + 1; y++)
        {
            for (var x = room.Left - 1; x <= room.Right + 1; x++)
            {
                var i = Index(new(x, y));
                var inner = x >= room.Left && x <= room.Right && y >= room.Top && y <= room.Bottom;
                if (i < 0 || taken[i] > 0 || (inner && (pins[i] > 0 || exits[i] > 0 || ways[i] > 0)))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private bool IsWayFree(Cell from, Heading heading)
    {
        var step = heading.Step();
        for (var cell = from + step; Index(cell) is var i && i >= 0; cell += step)
        {
            if (taken[i] > 0 || pins[i] > 0 || ways[i] > 0)
            {
                return false;
            }
        }

        return true;
    }

    private void Count(Placed placed, short by)
    {
        foreach (var room in placed.Rooms)
        {
            for (var y = room.Top; y <= room.Bottom; y++)
            {
                for (var x = room.Left; x <= room.Right; x++)
                {
                    taken[Index(new(x, y))] += by;
                }
            }
        }

        foreach (var pin in placed.Pins)
        {
            pins[Index(pin.At)] += by;
            var step = pin.Out.Step();
            exits[Index(pin.At + step)] += by;
            for (var cell = pin.At + step; pin.Tie == PinTie.RailLine && Index(cell) is var i && i >= 0; cell += step)
            {
                ways[i] += by;
            }
        }
    }

    public static int Index(Cell cell)
    {
        var (x, y) = (cell.X + Middle.X, cell.Y + Middle.Y);
        return x < 0 || y < 0 || x >= Columns || y >= Rows ? -1 : (y * Columns) + x;
    }
}
