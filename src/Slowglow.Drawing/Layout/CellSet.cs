using Slowglow.Drawing.Grid;

namespace Slowglow.Drawing.Layout;

/// <summary>Cells seen since it was last cleared. Clearing costs nothing, and on the bed nothing is hashed.</summary>
internal sealed class CellSet
{
    private readonly int[] stamps = new int[Bed.Size];
    private readonly HashSet<Cell> outside = [];
    private int stamp = 1;

    public void Clear()
    {
        stamp++;
        outside.Clear();
    }

    /// <summary>True when the cell was not in it yet.</summary>
    public bool Add(Cell cell)
    {
        var i = Bed.Index(cell);
        if (i < 0)
        {
            return outside.Add(cell);
        }

        var isNew = stamps[i] != stamp;
        stamps[i] = stamp;
        return isNew;
    }
}
