using Slowglow.Drawing.Grid;

namespace Slowglow.Drawing.Layout;

/// <summary>One line of words beside a symbol.</summary>
/// <param name="X">Grid units.</param>
/// <param name="Y">Baseline, grid units.</param>
/// <param name="IsName">The designator; otherwise value, type, control.</param>
/// <param name="Anchor">start, middle or end, as SVG has it.</param>
internal sealed record Label(double X, double Y, string Text, bool IsName, string Anchor)
{
    public Label Moved(Cell by) => this with { X = X + by.X, Y = Y + by.Y };
}
