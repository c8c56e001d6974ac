using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Layout;

namespace Slowglow.Drawing.Wiring;

/// <summary>Which net runs through which crossing of the grid, level or upright, and where none may.</summary>
internal sealed class WireGrid
{
    private readonly Rect area;
    private readonly bool[] blocked;
    private readonly string?[] pins;
    private readonly string?[] level;
    private readonly string?[] upright;

    public WireGrid(Rect area, IEnumerable<Placed> placed)
    {
        this.area = area;
        var size = (area.Width + 1) * (area.Height + 1);
        (blocked, pins, level, upright) = (new bool[size], new string?[size], new string?[size], new string?[size]);
        foreach (var one in placed)
        {
            one.Rooms.ToList().ForEach(Block);
            foreach (var pin in one.Pins)
            {
                pins[Index(pin.At)] = pin.Net;
            }
        }
    }

    public int Size => blocked.Length;

    public int Index(Cell cell) => area.Holds(cell) ? ((cell.Y - area.Top) * (area.Width + 1)) + cell.X - area.Left : -1;

    public Cell At(int index) => new((index % (area.Width + 1)) + area.Left, (index / (area.Width + 1)) + area.Top);

    public void Block(Rect room)
    {
        for (var y = room.Top; y <= room.Bottom; y++)
        {
            for (var x = room.Left; x <= room.Right; x++)
            {
                if (Index(new(x, y)) is var i && i >= 0)
                {
                    blocked[i] = true;
                }
            }
        }
    }

    /// <summary>True when nothing at all is there: no symbol, no pin, no wire.</summary>
    public bool IsEmpty(Cell cell) =>
        Index(cell) is var i && i >= 0 && !blocked[i] && pins[i] is null && level[i] is null && upright[i] is null;

    /// <summary>True when a wire of the net may turn, start or end there.</summary>
    public bool MayTurn(Cell cell, string net)
    {
        var i = Index(cell);
        return Enters(i, net) && (level[i] is null || level[i] == net) && (upright[i] is null || upright[i] == net);
    }

    /// <summary>True when a wire of the net may run straight through; <paramref name="crosses"/> tells whether it crosses another.</summary>
    public bool MayPass(Cell cell, string net, Heading heading, out bool crosses)
    {
        crosses = false;
        var i = Index(cell);
        if (!Enters(i, net))
        {
            return false;
        }

        var (along, across) = heading.IsLevel() ? (level[i], upright[i]) : (upright[i], level[i]);
        if (along is not null && along != net)
        {
            return false;
        }

        crosses = across is not null && across != net;
        return true;
    }

    /// <summary>Marks a straight run, both ends among it.</summary>
    public void Lay(string net, Cell from, Cell to)
    {
        var step = new Cell(Math.Sign(to.X - from.X), Math.Sign(to.Y - from.Y));
        var along = step.Y == 0 ? level : upright;
        for (var cell = from; ; cell += step)
        {
            along[Index(cell)] = net;
            if (cell == to)
            {
                break;
            }
        }
    }

    /// <summary>Places where two nets cross.</summary>
    public int Crossings() => Enumerable.Range(0, Size).Count(i => level[i] is { } a && upright[i] is { } b && a != b);

    private bool Enters(int i, string net) => i >= 0 && !blocked[i] && (pins[i] is null || pins[i] == net);
}
