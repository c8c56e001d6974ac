using Slowglow.Drawing.Symbols;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Drawing.Stages;

/// <summary>Partitions a sheet into strips: stages along the signal's way, cut where a strip is full, and the supply.</summary>
internal sealed class BandPlan
{
    /// <summary>Weight that a strip holds at most: about what A3 across shows legibly.</summary>
    private const double Most = 120;
    private const double SupplyRoom = 60;

    private readonly Sheet sheet;
    private readonly IReadOnlyList<Symbol> symbols;
    private readonly NetRoles roles;
    private readonly NetGraph graph;
    private readonly Dictionary<string, int> depth;

    public BandPlan(Sheet sheet, IReadOnlyList<Symbol> symbols, NetRoles roles)
    {
        this.sheet = sheet;
        this.symbols = symbols;
        this.roles = roles;
        graph = new NetGraph(symbols, roles);
        depth = Depths();
    }

    /// <summary>Parts from where the signal goes in (stages) or from the inlet (supply); large where neither leads.</summary>
    public int Depth(string net) => depth.GetValueOrDefault(net, 10_000);

    /// <summary>Stages first, in the order of the signal, the supply last.</summary>
    public IReadOnlyList<Band> Bands()
    {
        var inSignal = SignalSide();
        Symbol[] stages = [.. symbols.Where(inSignal.Contains)];
        Symbol[] supply = [.. symbols.Where(s => !inSignal.Contains(s))];
        var clusters = new Clusters(sheet, stages, roles, graph, Depth).InOrder();
        return
        [
            .. Filled(clusters, Room(clusters.Sum(c => c.Weight))).Select(s => new Band(false, s)),
            .. Filled(InChunks(supply), SupplyRoom).Select(s => new Band(true, s)),
        ];
    }

    /// <summary>
    /// Weight of a strip with which the paper comes out about as wide and high as A4 lying: a strip is some 42 units high and 1.4 wide for
    /// each of its weight.
    /// </summary>
    private static double Room(double total) =>
        Math.Min(Most, total / Math.Max(1, Math.Round((Math.Sqrt(1 + (4 * total / 42)) - 1) / 2)));

    /// <summary>Puts neighbours on one path together until a strip is full, and levels what is left over the strips.</summary>
    private static List<List<Symbol>> Filled(IReadOnlyList<Cluster> clusters, double room)
    {
        List<List<Symbol>> bands = [];
        foreach (var path in clusters.GroupBy(c => c.Path))
        {
            var total = path.Sum(c => c.Weight);
            var share = total / Math.Max(1, Math.Round(total / room));
            var weight = double.PositiveInfinity;
            foreach (var cluster in path.SelectMany(c => Split(c, room)))
            {
                var own = cluster.Weight;
                if (weight > 0 && weight + (own / 2) > share)
                {
                    bands.Add([]);
                    weight = 0;
                }

                bands[^1].AddRange(cluster.Symbols);
                weight += own;
            }
        }

        return bands;
    }

    private static IEnumerable<Cluster> Split(Cluster cluster, double room) =>
        cluster.Weight <= 1.4 * room
            ? [cluster]
            : cluster.Symbols.Chunk((int)Math.Max(4, 0.6 * room)).Select(c => cluster with { Symbols = c });

    /// <summary>The supply in order of its depth, the heaters at the end.</summary>
    private Cluster[] InChunks(Symbol[] supply) =>
        [
            .. supply
                .OrderBy(s => s is HeaterSymbol ? 1 : 0)
                .ThenBy(s => s.Pins.Where(p => p.Net != NetTable.Ground).Select(p => Depth(p.Net)).DefaultIfEmpty(10_000).Min())
                .Select(s => new Cluster(0, [s])),
        ];

    private Dictionary<string, int> Depths()
    {
        var signal = graph.Walk(sheet.Signals.Select(s => s.In));
        var found = signal.ToDictionary(p => p.Key, p => p.Value.Cost);
        var supply = new Queue<string>(new[] { NetTable.Live, NetTable.Neutral }.Where(n => graph.On(n).Count > 0));
        foreach (var net in supply)
        {
            found.TryAdd(net, 0);
        }

        Spread(found, supply, roles.IsSupply);
        Spread(found, new Queue<string>(signal.Keys), n => !roles.IsSupply(n));
        return found;
    }

    /// <summary>What the signal's direction does not reach stands one part after its neighbour.</summary>
    private void Spread(Dictionary<string, int> found, Queue<string> queue, Func<string, bool> through)
    {
        while (queue.TryDequeue(out var net))
        {
            var next = graph.On(net).SelectMany(s => s.Pins).Select(p => p.Net).Where(n => n != NetTable.Ground && through(n));
            foreach (var other in next.Distinct().Where(n => !found.ContainsKey(n)).ToArray())
            {
                found[other] = found[net] + 1;
                queue.Enqueue(other);
            }
        }
    }

    /// <summary>Everything that hangs together with an active section or the signal's ends without going through a rail.</summary>
    private HashSet<Symbol> SignalSide()
    {
        HashSet<Symbol> side = [];
        HashSet<string> seen = [];
        var ends = sheet.Signals.SelectMany(s => new[] { s.In, s.Out });
        Queue<string> queue = new(ends);
        if (sheet.Signals.Count == 0)
        {
            foreach (var active in symbols.Where(s => s.IsActive))
            {
                side.Add(active);
                active.Pins.ToList().ForEach(p => queue.Enqueue(p.Net));
            }
        }

        while (queue.TryDequeue(out var net))
        {
            if (roles.IsSupply(net) || !seen.Add(net))
            {
                continue;
            }

            foreach (var symbol in graph.On(net).Where(s => s.Part is not TransformerPart { IsOutput: false }))
            {
                side.Add(symbol);
                symbol.Pins.ToList().ForEach(p => queue.Enqueue(p.Net));
            }
        }

        // A valve whose every electrode sits on a rail still belongs to the stages, unless it is a pass transistor.
        side.UnionWith(symbols.OfType<TriodeSymbol>());
        return side;
    }
}
