namespace Slowglow.Drawing.Grid;

/// <summary>Which way a pin or a wire looks.</summary>
internal enum Heading
{
    Up,
    Right,
    Down,
    Left,
}
