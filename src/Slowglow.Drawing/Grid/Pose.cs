namespace Slowglow.Drawing.Grid;

/// <summary>How a symbol stands: mirrored left to right first, then upside down, then turned clockwise by quarters.</summary>
internal readonly record struct Pose(int Quarters = 0, bool Mirrored = false, bool Inverted = false)
{
    public bool IsTurned => Quarters % 2 == 1;

    public Cell Apply(Cell cell)
    {
        var (x, y) = Apply(cell.X, cell.Y);
        return new((int)x, (int)y);
    }

    public (double X, double Y) Apply(double x, double y)
    {
        x = Mirrored ? -x : x;
        y = Inverted ? -y : y;
        return Quarters switch
        {
            1 => (-y, x),
            2 => (-x, -y),
            3 => (y, -x),
            _ => (x, y),
        };
    }

    public Heading Apply(Heading heading)
    {
        var step = Apply(heading.Step());
        return Headings.All.First(h => h.Step() == step);
    }

    public Rect Apply(Rect rect) => Rect.Around(Apply(new Cell(rect.Left, rect.Top)), Apply(new Cell(rect.Right, rect.Bottom)));
}
