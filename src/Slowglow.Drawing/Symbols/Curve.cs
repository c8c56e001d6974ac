namespace Slowglow.Drawing.Symbols;

/// <summary>Cubic curves from point to point: a start, then two handles and an end for each.</summary>
internal sealed record Curve(IReadOnlyList<(double X, double Y)> Points) : Stroke
{
    /// <summary>Half turns of a winding, standing, bulging to the side of the sign.</summary>
    public static Curve Winding(double x, double top, double bottom, int turns, int side)
    {
        var step = (bottom - top) / turns;
        var bulge = side * Math.Min(0.9, step);
        List<(double, double)> points = [(x, top)];
        for (var i = 0; i < turns; i++)
        {
            var y = top + (i * step);
            points.AddRange([(x + bulge, y), (x + bulge, y + step), (x, y + step)]);
        }

        return new(points);
    }
}
