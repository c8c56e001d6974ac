using Slowglow.Drawing.Grid;

namespace Slowglow.Drawing.Wiring;

/// <summary>A rail drawn as a line along a strip's edge, with its name at the left end.</summary>
internal sealed record RailLine(string Net, int Y, int Left, int Right, Rect NameRoom)
{
    public RailLine Moved(Cell by) => new(Net, Y + by.Y, Left + by.X, Right + by.X, NameRoom.Moved(by));
}
