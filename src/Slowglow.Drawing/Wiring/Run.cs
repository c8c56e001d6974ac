using Slowglow.Drawing.Grid;

namespace Slowglow.Drawing.Wiring;

/// <summary>A wire from end to end, corner by corner.</summary>
internal sealed record Run(string Net, IReadOnlyList<Cell> Corners)
{
    /// <summary>Every crossing of the grid that it touches.</summary>
    public IEnumerable<Cell> Cells()
    {
        yield return Corners[0];
        for (var i = 1; i < Corners.Count; i++)
        {
            var (from, to) = (Corners[i - 1], Corners[i]);
            var step = new Cell(Math.Sign(to.X - from.X), Math.Sign(to.Y - from.Y));
            for (var cell = from; cell != to; )
            {
                cell += step;
                yield return cell;
            }
        }
    }

    public Run Moved(Cell by) => this with { Corners = [.. Corners.Select(c => c + by)] };
}
