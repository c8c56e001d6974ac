namespace Slowglow.Solving;

/// <summary>
/// Where the matrix has entries, in which order unknowns are eliminated (minimum degree, diagonal pivots), the entries that elimination
/// fills in, and the elimination itself as lists of positions.
/// </summary>
internal sealed class SparsePattern
{
    private readonly Dictionary<(int Row, int Column), int> positions = [];

    private SparsePattern(int size) => Size = size;

    public int Size { get; }
    public int Entries => positions.Count;

    /// <summary>Unknown eliminated k-th.</summary>
    public int[] Order { get; private set; } = [];

    /// <summary>Position of an unknown's own entry.</summary>
    public int[] Diagonal { get; private set; } = [];

    /// <summary>Position of the pivot of step k.</summary>
    public int[] Pivot { get; private set; } = [];

    /// <summary>Elimination: for every step k, entries below the pivot.</summary>
    public int[] LowerStart { get; private set; } = [];
    public int[] LowerPosition { get; private set; } = [];
    public int[] LowerRow { get; private set; } = [];

    /// <summary>For every step k, entries right of the pivot.</summary>
    public int[] UpperStart { get; private set; } = [];
    public int[] UpperPosition { get; private set; } = [];
    public int[] UpperColumn { get; private set; } = [];

    /// <summary>For the n-th lower entry: positions that its row's update writes, one for each upper entry of the step.</summary>
    public int[] TargetStart { get; private set; } = [];
    public int[] Target { get; private set; } = [];

    private const int WorthWriting = 20_000;
    private const int MostTargets = 20_000;
    private volatile FactorCode.Pair? written;
    private int factored;

    /// <summary>Straight-line code of this pattern, once it was written.</summary>
    public FactorCode.Pair? Written => written;

    /// <summary>Straight-line code; null as long as it is not worth writing or is still being written, which goes on beside the work.</summary>
    public FactorCode.Pair? Code()
    {
        if (written is null && Target.Length < MostTargets && Interlocked.Increment(ref factored) == WorthWriting)
        {
            Task.Run(() => written = new(FactorCode.Factor(this), FactorCode.Solve(this)));
        }

        return written;
    }

    public int PositionOf(int row, int column) => positions[(row, column)];

    /// <summary>Positions of all pairs of some rows, row by row; <see cref="Entries"/> where one of the pair is ground (-1).</summary>
    public int[] PositionsOf(int[] rows) =>
        [.. rows.SelectMany(_ => rows, (r, c) => r < 0 || c < 0 ? Entries : positions[(r, c)])];

    public static SparsePattern Build(Equations equations)
    {
        var pattern = new SparsePattern(equations.Unknowns);
        var rows = new HashSet<int>[equations.Unknowns];
        for (var r = 0; r < rows.Length; r++)
        {
            rows[r] = [r];
        }

        foreach (var branch in equations.Branches)
        {
            Join(rows, branch.Rows);
        }

        foreach (var element in equations.Elements)
        {
            Join(rows, element.Rows);
        }

        pattern.Eliminate(rows);
        return pattern;
    }

    private static void Join(HashSet<int>[] rows, int[] members)
    {
        foreach (var a in members.Where(m => m >= 0))
        {
            foreach (var b in members.Where(m => m >= 0))
            {
                rows[a].Add(b);
            }
        }
    }

    private void Eliminate(HashSet<int>[] rows)
    {
        var left = Enumerable.Range(0, Size).ToHashSet();
        var order = new List<int>();
        var steps = new List<int[]>();
        var live = rows.Select(r => new HashSet<int>(r)).ToArray();
        while (left.Count > 0)
        {
            var next = left.MinBy(r => (live[r].Count, r));
            var others = live[next].Where(r => r != next).OrderBy(r => r).ToArray();
            foreach (var a in others)
            {
                live[a].UnionWith(others);
                live[a].Remove(next);
            }

            order.Add(next);
            steps.Add(others);
            left.Remove(next);
        }

        Order = [.. order];
        Number(order, steps);
    }

    private void Number(List<int> order, List<int[]> steps)
    {
        int At(int r, int c)
        {
            if (!positions.TryGetValue((r, c), out var p))
            {
                positions[(r, c)] = p = positions.Count;
            }

            return p;
        }

        List<int> lowerStart = [0],
            lowerPosition = [],
            lowerRow = [];
        List<int> upperStart = [0],
            upperPosition = [],
            upperColumn = [],
            targetStart = [0],
            target = [];
        var pivot = new int[Size];
        for (var k = 0; k < Size; k++)
        {
            var p = order[k];
            pivot[k] = At(p, p);
            foreach (var c in steps[k])
            {
                upperPosition.Add(At(p, c));
                upperColumn.Add(c);
            }

            foreach (var r in steps[k])
            {
                lowerPosition.Add(At(r, p));
                lowerRow.Add(r);
                foreach (var c in steps[k])
                {
                    target.Add(At(r, c));
                }

                targetStart.Add(target.Count);
            }

            lowerStart.Add(lowerPosition.Count);
            upperStart.Add(upperPosition.Count);
        }

        Pivot = pivot;
        Diagonal = [.. Enumerable.Range(0, Size).Select(r => positions[(r, r)])];
        (LowerStart, LowerPosition, LowerRow) = ([.. lowerStart], [.. lowerPosition], [.. lowerRow]);
        (UpperStart, UpperPosition, UpperColumn) = ([.. upperStart], [.. upperPosition], [.. upperColumn]);
        (TargetStart, Target) = ([.. targetStart], [.. target]);
    }
}
