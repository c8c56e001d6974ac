using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Layout;
using Slowglow.Drawing.Stages;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Wiring;

/// <summary>Joins the pins of a strip: rails first, then the shortest nets; what has no good way gets tags with the net's name.</summary>
internal sealed class Wirer
{
    /// <summary>Way finder's cost over which a tag reads better than a wire: about 40 units with a few corners.</summary>
    private const int DearestWay = 120;
    private const int Margin = 5;

    private readonly IReadOnlyList<Placed> placed;
    private readonly WireGrid grid;
    private readonly WayFinder finder;
    private readonly List<Run> runs = [];
    private readonly List<Attachment> tags = [];
    private readonly List<SymbolPin> stranded = [];
    private readonly List<string> failed = [];
    private readonly HashSet<Symbol> needless = [];
    private readonly IReadOnlyList<RailLine> rails;
    private readonly CancellationToken cancel;

    public Wirer(IReadOnlyList<Placed> placed, NetRoles roles, CancellationToken cancel)
    {
        this.placed = placed;
        this.cancel = cancel;
        rails = RailLines.Of(placed, roles);
        var area = placed
            .Select(p => p.Outline)
            .Concat(rails.Select(r => r.NameRoom))
            .Aggregate((a, b) => a.With(b))
            .Grown(Margin);
        grid = new WireGrid(area, placed);
        finder = new WayFinder(grid);
    }

    /// <param name="first">Nets to join before all others.</param>
    public Wired Run(IReadOnlyList<string> first)
    {
        LayRails();
        var nets = placed
            .SelectMany(p => p.Pins.Select(pin => (Owner: p.Symbol, Pin: pin)))
            .Where(p => p.Pin.Tie == PinTie.Wire)
            .GroupBy(p => p.Pin.Net)
            .OrderBy(g => first.Contains(g.Key) ? 0 : 1)
            .ThenBy(g => Span(g.Select(p => p.Pin.At)))
            .ThenBy(g => g.Key, StringComparer.Ordinal);
        foreach (var net in nets)
        {
            cancel.ThrowIfCancellationRequested();
            Join(net.Key, [.. net]);
        }

        return new([.. placed.Where(p => !needless.Contains(p.Symbol))], runs, rails, tags, stranded, failed, grid.Crossings());
    }

    private static int Span(IEnumerable<Cell> cells)
    {
        var rect = Rect.Around([.. cells]);
        return rect.Width + rect.Height;
    }

    private void LayRails()
    {
        foreach (var rail in rails)
        {
            grid.Block(rail.NameRoom);
            if (rail.Left < rail.Right)
            {
                Lay(new(rail.Net, [new(rail.Left, rail.Y), new(rail.Right, rail.Y)]));
            }
        }

        foreach (var pin in placed.SelectMany(p => p.Pins).Where(p => p.Tie == PinTie.RailLine))
        {
            Lay(new(pin.Net, [pin.At, new(pin.At.X, rails.First(r => r.Net == pin.Net).Y)]));
        }
    }

    private void Lay(Run run)
    {
        runs.Add(run);
        for (var i = 1; i < run.Corners.Count; i++)
        {
            grid.Lay(run.Net, run.Corners[i - 1], run.Corners[i]);
        }
    }

    private void Join(string net, IReadOnlyList<(Symbol Owner, PlacedPin Pin)> pins)
    {
        List<Island> islands = [.. pins.Select(p => new Island(p.Owner, p.Pin))];
        while (islands.Count > 1 && Shortest(net, islands) is { } found)
        {
            Lay(found.Way);
            islands[found.From].Take(islands[found.To], found.Way);
            islands.RemoveAt(found.To);
        }

        if (islands.Count > 1)
        {
            failed.Add(net);
            TagAll(net, islands);
        }
    }

    /// <summary>Grows the largest island first: it is the trunk that the others join.</summary>
    private (int From, int To, Run Way)? Shortest(string net, List<Island> islands)
    {
        foreach (var from in Enumerable.Range(0, islands.Count).OrderByDescending(i => islands[i].Cells.Count).ThenBy(i => i))
        {
            var goals = islands.Where((_, i) => i != from).SelectMany(i => i.Cells).Where(c => grid.MayTurn(c, net)).ToHashSet();
            if (finder.Find(net, islands[from].Cells, goals, DearestWay) is { } way)
            {
                return (from, islands.FindIndex(i => i != islands[from] && i.Cells.Contains(way.Corners[^1])), way);
            }
        }

        return null;
    }

    private void TagAll(string net, List<Island> islands)
    {
        foreach (var lone in islands.Where(i => i.IsTag))
        {
            needless.Add(lone.Owners[0]);
        }

        foreach (var island in islands.Where(i => !i.IsTag && !i.HoldsTag))
        {
            if (TagPlace(net, island) is { } tag)
            {
                tags.Add(tag);
                tag.Room.ToList().ForEach(grid.Block);
                if (tag.Lead.Count > 1)
                {
                    grid.Lay(net, tag.Lead[0], tag.Lead[1]);
                }
            }
            else
            {
                stranded.Add(island.FirstPin);
            }
        }
    }

    private Attachment? TagPlace(string net, Island island)
    {
        foreach (var (cell, headings) in island.Places())
        {
            foreach (var heading in headings)
            {
                var tag = Attachment.Tag(cell, heading, net);
                var roomy =
                    tag.Room.All(r => IsEmpty(r.Grown(0))) && grid.MayTurn(cell, net) && grid.IsEmpty(cell + heading.Step());
                if (roomy)
                {
                    return tag;
                }
            }
        }

        return null;
    }

    private bool IsEmpty(Rect room)
    {
        for (var y = room.Top; y <= room.Bottom; y++)
        {
            for (var x = room.Left; x <= room.Right; x++)
            {
                if (!grid.IsEmpty(new(x, y)))
                {
                    return false;
                }
            }
        }

        return true;
    }
}
