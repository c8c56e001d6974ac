namespace Slowglow.Tests.Drawing;

/// <summary>Something on the paper and the room it takes, pixels.</summary>
internal sealed record Box(string Name, double Left, double Top, double Right, double Bottom)
{
    public bool Meets(Box other) =>
        Left < other.Right - 0.5 && other.Left < Right - 0.5 && Top < other.Bottom - 0.5 && other.Top < Bottom - 0.5;
}
