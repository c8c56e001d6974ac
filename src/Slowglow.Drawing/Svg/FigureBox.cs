using Slowglow.Drawing.Grid;

namespace Slowglow.Drawing.Svg;

/// <summary>A point's figures at their place beside its wire.</summary>
/// <param name="Spot">Where the probe goes.</param>
/// <param name="Leader">Where a fine line from the spot ends when the words had to stand further off.</param>
/// <param name="Left">Grid units.</param>
/// <param name="Top">Baseline of the first line, grid units.</param>
internal sealed record FigureBox(
    PointFigure Figure,
    IReadOnlyList<FigureLine> Lines,
    Cell Spot,
    double Left,
    double Top,
    string Anchor,
    Cell? Leader = null
);
