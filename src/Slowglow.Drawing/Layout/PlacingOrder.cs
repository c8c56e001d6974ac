using Slowglow.Drawing.Stages;
using Slowglow.Drawing.Symbols;
using Slowglow.Sheets;

namespace Slowglow.Drawing.Layout;

/// <summary>Which symbol is placed when: always one that hangs on what is there, the earliest along the signal's way first.</summary>
internal sealed class PlacingOrder(NetRoles roles, Func<string, int> depth, bool isSupplyStrip)
{
    public IReadOnlyList<Symbol> Of(IReadOnlyList<Symbol> symbols)
    {
        List<Symbol> order = [];
        var waiting = symbols.OrderBy(Key).ToList();
        HashSet<string> reached = [];
        while (waiting.Count > 0)
        {
            var next = waiting.FirstOrDefault(s => s is not TagSymbol && Nets(s).Any(reached.Contains)) ?? waiting[0];
            waiting.Remove(next);
            order.Add(next);
            reached.UnionWith(Nets(next));
        }

        return order;
    }

    private IEnumerable<string> Nets(Symbol symbol) => symbol.Pins.Select(p => p.Net).Where(IsWay);

    private bool IsWay(string net) => isSupplyStrip ? net != NetTable.Ground : !roles.IsSupply(net);

    /// <summary>Depth first; at one depth what lies on the way, then what hangs on an electrode, then what else hangs there; tags last.</summary>
    private (int Tag, double Depth) Key(Symbol symbol)
    {
        if (symbol is TagSymbol)
        {
            return (1, 0);
        }

        var own = symbol.Pins.Where(p => IsWay(p.Net)).Select(p => depth(p.Net)).DefaultIfEmpty(10_000).ToArray();
        var depths = symbol is ActiveSymbol active
            ? active.Inputs.Where(n => !roles.IsSupply(n)).Select(depth).DefaultIfEmpty(own.Min()).Min()
            : own.Min();
        var hangs = symbol.IsTwoEnded && symbol.Pins.Any(p => !IsWay(p.Net));
        return (
            0,
            depths
                + (
                    symbol.IsActive || symbol is ConnectorSymbol ? 0
                    : hangs ? 0.3
                    : 0.5
                )
        );
    }
}
