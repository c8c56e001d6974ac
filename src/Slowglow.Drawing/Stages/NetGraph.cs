using Slowglow.Drawing.Symbols;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Sheets.Parts.Resistor;
using Slowglow.Sheets.Parts.Transformer;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Drawing.Stages;

/// <summary>How far every net is from where the signal goes in, counted in parts on the way.</summary>
internal sealed class NetGraph
{
    private const int Amplifier = 2;
    private const int Other = 4;
    private const int Follower = 16;

    private readonly Dictionary<string, List<(Symbol Through, string To, int Cost)>> onward = [];
    private readonly Dictionary<string, List<Symbol>> on = [];

    public NetGraph(IReadOnlyList<Symbol> symbols, NetRoles roles)
    {
        foreach (var symbol in symbols)
        {
            foreach (var net in symbol.Pins.Select(p => p.Net).Distinct())
            {
                Listed(on, net).Add(symbol);
            }

            foreach (
                var (from, to, cost) in Steps(symbol)
                    .Where(t => t.From != t.To && !roles.IsSupply(t.From) && !roles.IsSupply(t.To))
            )
            {
                Listed(onward, from).Add((symbol, to, cost));
            }
        }
    }

    public IReadOnlyList<Symbol> On(string net) => on.TryGetValue(net, out var symbols) ? symbols : [];

    /// <summary>Least cost from the starts to every net that can be reached along the signal's way, and the symbol that led there.</summary>
    public Dictionary<string, (int Cost, Symbol? Through, string From)> Walk(IEnumerable<string> starts)
    {
        Dictionary<string, (int Cost, Symbol? Through, string From)> found = [];
        PriorityQueue<(string Net, Symbol? Through, string From), int> queue = new();
        foreach (var start in starts)
        {
            queue.Enqueue((start, null, start), 0);
        }

        while (queue.TryDequeue(out var step, out var cost))
        {
            if (!found.TryAdd(step.Net, (cost, step.Through, step.From)) || !onward.TryGetValue(step.Net, out var ways))
            {
                continue;
            }

            foreach (var way in ways.Where(w => !found.ContainsKey(w.To)))
            {
                queue.Enqueue((way.To, way.Through, step.Net), cost + way.Cost);
            }
        }

        return found;
    }

    /// <summary>Active symbols on the shortest way from in to out, in order.</summary>
    public IReadOnlyList<Symbol> Way(SignalPath path)
    {
        var found = Walk([path.In]);
        List<Symbol> way = [];
        for (var net = path.Out; found.TryGetValue(net, out var step) && step.Through is { } through; net = step.From)
        {
            if (through.IsActive && (way.Count == 0 || way[^1] != through))
            {
                way.Add(through);
            }
        }

        way.Reverse();
        return way;
    }

    /// <summary>
    /// A section leads from what it listens to to what it drives, willingly out of its anode, unwillingly out of its cathode: else
    /// feedback to a cathode would look like the way to the loudspeaker. Anything else leads both ways.
    /// </summary>
    private static IEnumerable<(string From, string To, int Cost)> Steps(Symbol symbol)
    {
        if (symbol is ActiveSymbol active)
        {
            return active.Inputs.SelectMany(i =>
                active.Outputs.Select(o => (i, o, active.Inputs.Contains(o) ? Follower : Amplifier))
            );
        }

        var cost = Cost(symbol.Part);
        string[] nets = [.. symbol.Pins.Select(p => p.Net).Distinct()];
        return nets.SelectMany(f => nets.Select(t => (f, t, cost)));
    }

    /// <summary>
    /// The signal takes stoppers and coupling capacitors rather than grid leaks and feedback: large resistors and small capacitors are
    /// long ways. The figures are judgement: they only order the drawing.
    /// </summary>
    private static int Cost(Part? part) =>
        part switch
        {
            ResistorPart resistor => (int)Math.Clamp(4 + (2 * Math.Log10(resistor.Ohms / 1e3)), 2, 12),
            CapacitorPart capacitor => (int)Math.Clamp(4 - Math.Log10(capacitor.Farads / 100e-9), 2, 10),
            WirePart => 1,
            TransformerPart => 2,
            _ => Other,
        };

    private static List<T> Listed<T>(Dictionary<string, List<T>> lists, string key)
    {
        if (!lists.TryGetValue(key, out var list))
        {
            lists[key] = list = [];
        }

        return list;
    }
}
