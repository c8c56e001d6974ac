namespace Slowglow.Drawing.Grid;

/// <summary>A crossing of the drawing's grid; x grows to the right, y downwards.</summary>
internal readonly record struct Cell(int X, int Y)
{
    public static Cell operator +(Cell a, Cell b) => new(a.X + b.X, a.Y + b.Y);

    public static Cell operator -(Cell a, Cell b) => new(a.X - b.X, a.Y - b.Y);

    public int DistanceTo(Cell other) => Math.Abs(X - other.X) + Math.Abs(Y - other.Y);
}
