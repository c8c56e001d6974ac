using Slowglow.Drawing.Grid;

namespace Slowglow.Drawing.Wiring;

/// <summary>Finds the cheapest orthogonal way over the grid: short, few corners, few crossings, never through a symbol or its words.</summary>
internal sealed class WayFinder(WireGrid grid)
{
    private const int Step = 2;
    private const int Corner = 5;
    private const int Crossing = 14;

    private readonly int[] costs = new int[4 * grid.Size];
    private readonly int[] from = new int[4 * grid.Size];

    /// <summary>From any of the starts to the nearest goal; null when there is none within the cost.</summary>
    public Run? Find(string net, IEnumerable<Cell> starts, IReadOnlySet<Cell> goals, int dearest)
    {
        Array.Fill(costs, int.MaxValue);
        PriorityQueue<int, int> queue = new();
        foreach (var start in starts.Where(s => grid.MayTurn(s, net)))
        {
            for (var h = 0; h < 4; h++)
            {
                var state = (4 * grid.Index(start)) + h;
                costs[state] = 0;
                from[state] = -1;
                queue.Enqueue(state, 0);
            }
        }

        while (queue.TryDequeue(out var state, out var cost))
        {
            if (cost > costs[state] || cost > dearest)
            {
                continue;
            }

            var cell = grid.At(state / 4);
            if (goals.Contains(cell))
            {
                return Trace(net, state);
            }

            Spread(net, state, cell, cost, queue);
        }

        return null;
    }

    private void Spread(string net, int state, Cell cell, int cost, PriorityQueue<int, int> queue)
    {
        var heading = (Heading)(state % 4);
        var mayTurn = grid.MayTurn(cell, net);
        foreach (var next in Headings.All)
        {
            if (next == heading.Opposite() || (next != heading && !mayTurn))
            {
                continue;
            }

            var there = cell + next.Step();
            if (!grid.MayPass(cell, net, next, out _) || !grid.MayPass(there, net, next, out var crosses))
            {
                continue;
            }

            var sum = cost + Step + (next == heading || from[state] < 0 ? 0 : Corner) + (crosses ? Crossing : 0);
            var reached = (4 * grid.Index(there)) + (int)next;
            if (sum < costs[reached])
            {
                costs[reached] = sum;
                from[reached] = state;
                queue.Enqueue(reached, sum);
            }
        }
    }

    private Run Trace(string net, int state)
    {
        List<Cell> cells = [];
        for (var s = state; s >= 0; s = from[s])
        {
            cells.Add(grid.At(s / 4));
        }

        cells.Reverse();
        List<Cell> corners = [cells[0]];
        for (var i = 1; i < cells.Count - 1; i++)
        {
            if (cells[i] - cells[i - 1] != cells[i + 1] - cells[i])
            {
                corners.Add(cells[i]);
            }
        }

        return new(net, [.. corners, cells[^1]]);
    }
}
