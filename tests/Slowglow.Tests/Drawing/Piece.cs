namespace Slowglow.Tests.Drawing;

/// <summary>A straight piece of a wire.</summary>
internal sealed record Piece(int Wire, (double X, double Y) From, (double X, double Y) To)
{
    public bool Holds((double X, double Y) point) =>
        point.X >= Math.Min(From.X, To.X) - 0.1
        && point.X <= Math.Max(From.X, To.X) + 0.1
        && point.Y >= Math.Min(From.Y, To.Y) - 0.1
        && point.Y <= Math.Max(From.Y, To.Y) + 0.1;

    /// <summary>True when the piece runs through the inside of the box.</summary>
    public bool RunsThrough(Box box) =>
        Math.Max(From.X, To.X) > box.Left + 0.5
        && Math.Min(From.X, To.X) < box.Right - 0.5
        && Math.Max(From.Y, To.Y) > box.Top + 0.5
        && Math.Min(From.Y, To.Y) < box.Bottom - 0.5;
}
