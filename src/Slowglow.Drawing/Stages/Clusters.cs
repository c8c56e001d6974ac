using Slowglow.Drawing.Symbols;
using Slowglow.Sheets;

namespace Slowglow.Drawing.Stages;

/// <summary>Gathers the parts of the stages about their active sections.</summary>
internal sealed class Clusters(Sheet sheet, IReadOnlyList<Symbol> stages, NetRoles roles, NetGraph graph, Func<string, int> depth)
{
    /// <summary>Handicap of a section's driven nets: coupling parts belong to the stage that they lead to.</summary>
    private const int DrivenHandicap = 12;

    private const int ControlHandicap = 3;

    private readonly HashSet<Symbol> members = [.. stages];
    private readonly Dictionary<Symbol, Symbol> leaderOf = [];

    /// <summary>One list a stage, along each signal path in turn, what no path passes through beside its neighbour.</summary>
    public IReadOnlyList<Cluster> InOrder()
    {
        var leaders = Leaders();
        if (leaders.Count == 0)
        {
            return [.. ByDepth(stages).Select(s => new Cluster(0, [s]))];
        }

        foreach (var leader in leaders)
        {
            leaderOf[leader] = leader;
        }

        // A mirror under a pair is two steps from the leader: again until no further section is reached.
        for (var before = -1; before < leaderOf.Count; )
        {
            before = leaderOf.Count;
            Gather([.. leaderOf.Keys], stages.Where(s => s.IsActive));
        }

        Gather([.. leaders, .. stages.Where(s => s.IsActive && leaderOf.ContainsKey(s) && !leaders.Contains(s))], stages);
        var rest = stages.Where(s => !leaderOf.ContainsKey(s)).ToArray();
        var ways = sheet.Signals.Select(graph.Way).ToList();
        var gathered = leaders.Select(l => new Cluster(
            ways.FindIndex(w => w.Contains(l)),
            [.. ByDepth(stages.Where(s => leaderOf.GetValueOrDefault(s) == l))]
        ));
        return rest.Length > 0 ? [.. gathered, new Cluster(-1, [.. ByDepth(rest)])] : [.. gathered];
    }

    private IEnumerable<Symbol> ByDepth(IEnumerable<Symbol> some) => some.OrderBy(s => s.Pins.Min(p => depth(p.Net)));

    /// <summary>Active sections on the signal's ways, each once; without a path, every active section.</summary>
    private List<Symbol> Leaders()
    {
        var onWays = sheet.Signals.SelectMany(graph.Way).Where(members.Contains).Distinct().ToList();
        return onWays.Count > 0 ? onWays : [.. ByDepth(stages.Where(s => s.IsActive))];
    }

    /// <summary>Gives each candidate to the leader that is nearest to it.</summary>
    private void Gather(IReadOnlyList<Symbol> sources, IEnumerable<Symbol> candidates)
    {
        var wanted = candidates.Where(c => !leaderOf.ContainsKey(c)).ToHashSet();
        foreach (var source in sources)
        {
            foreach (
                var symbol in source.Pins.Where(p => !roles.IsSupply(p.Net)).SelectMany(p => graph.On(p.Net)).Where(HangsOnSupply)
            )
            {
                if (wanted.Remove(symbol))
                {
                    leaderOf[symbol] = leaderOf[source];
                }
            }
        }

        var nearest = Nearest(sources);
        foreach (var symbol in wanted)
        {
            var reached = symbol
                .Pins.Where(p => nearest.ContainsKey(p.Net))
                .OrderBy(p =>
                    nearest[p.Net].Cost + (symbol is ActiveSymbol active && IsControl(active, p.Net) ? ControlHandicap : 0)
                )
                .FirstOrDefault();
            if (reached is not null)
            {
                leaderOf[symbol] = nearest[reached.Net].Leader;
            }
        }
    }

    /// <summary>A grid or base: twins are joined at their cathodes or emitters, feedback comes to the grid.</summary>
    private static bool IsControl(ActiveSymbol active, string net) =>
        active.Inputs.Contains(net) && !active.Outputs.Contains(net);

    /// <summary>A load, a bias part, a bypass: two ends, one of them on the supply.</summary>
    private bool HangsOnSupply(Symbol symbol) =>
        symbol.IsTwoEnded && members.Contains(symbol) && symbol.Pins.Any(p => roles.IsSupply(p.Net));

    private Dictionary<string, (int Cost, Symbol Leader)> Nearest(IReadOnlyList<Symbol> sources)
    {
        Dictionary<string, (int Cost, Symbol Leader)> found = [];
        PriorityQueue<(string Net, Symbol Leader), int> queue = new();
        foreach (var source in sources)
        {
            foreach (var pin in source.Pins.Where(p => !roles.IsSupply(p.Net)))
            {
                var driven = source is ActiveSymbol active && !active.Inputs.Contains(pin.Net);
                queue.Enqueue((pin.Net, leaderOf[source]), driven ? DrivenHandicap : 0);
            }
        }

        while (queue.TryDequeue(out var step, out var cost))
        {
            if (!found.TryAdd(step.Net, (cost, step.Leader)))
            {
                continue;
            }

            foreach (
                var net in graph
                    .On(step.Net)
                    .Where(s => members.Contains(s) && !s.IsActive)
                    .SelectMany(s => s.Pins)
                    .Select(p => p.Net)
            )
            {
                if (!roles.IsSupply(net) && !found.ContainsKey(net))
                {
                    queue.Enqueue((net, step.Leader), cost + 1);
                }
            }
        }

        return found;
    }
}
