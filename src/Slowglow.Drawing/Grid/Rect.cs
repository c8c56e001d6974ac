namespace Slowglow.Drawing.Grid;

/// <summary>A block of grid crossings, edges included.</summary>
internal readonly record struct Rect(int Left, int Top, int Right, int Bottom)
{
    public static Rect Around(params ReadOnlySpan<Cell> cells)
    {
        var rect = new Rect(cells[0].X, cells[0].Y, cells[0].X, cells[0].Y);
        foreach (var cell in cells)
        {
            rect = rect.With(new Rect(cell.X, cell.Y, cell.X, cell.Y));
        }

        return rect;
    }

    public int Width => Right - Left;
    public int Height => Bottom - Top;

    public Rect Moved(Cell by) => new(Left + by.X, Top + by.Y, Right + by.X, Bottom + by.Y);

    public Rect Grown(int by) => new(Left - by, Top - by, Right + by, Bottom + by);

    public Rect With(Rect other) =>
        new(Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

    public bool Holds(Cell cell) => cell.X >= Left && cell.X <= Right && cell.Y >= Top && cell.Y <= Bottom;

    public bool Meets(Rect other) => Left <= other.Right && other.Left <= Right && Top <= other.Bottom && other.Top <= Bottom;
}
