namespace Slowglow.Drawing.Symbols;

/// <summary>A line through points; closed and filled with ink or paper where it says so.</summary>
internal sealed record Line(IReadOnlyList<(double X, double Y)> Points, Fill Fill = Fill.None, bool Closed = false) : Stroke
{
    public static Line Of(params (double X, double Y)[] points) => new(points);

    public static Line Shape(params (double X, double Y)[] points) => new(points, Fill.Paper, true);

    public static Line Solid(params (double X, double Y)[] points) => new(points, Fill.Ink, true);

    public static Line Box(double left, double top, double right, double bottom) =>
        Shape((left, top), (right, top), (right, bottom), (left, bottom));

    /// <summary>Two strokes with a head at the second point.</summary>
    public static IEnumerable<Stroke> Arrow((double X, double Y) from, (double X, double Y) to, double size = 0.5)
    {
        var length = Math.Sqrt(((to.X - from.X) * (to.X - from.X)) + ((to.Y - from.Y) * (to.Y - from.Y)));
        var (ux, uy) = ((to.X - from.X) / length, (to.Y - from.Y) / length);
        var neck = (X: to.X - (size * ux), Y: to.Y - (size * uy));
        var half = 0.45 * size;
        yield return Of(from, neck);
        yield return Solid(to, (neck.X - (half * uy), neck.Y + (half * ux)), (neck.X + (half * uy), neck.Y - (half * ux)));
    }
}
