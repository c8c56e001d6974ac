using Slowglow.Drawing.Stages;
using Slowglow.Drawing.Symbols;
using Slowglow.Sheets;

namespace Slowglow.Drawing.Layout;

/// <summary>How the nets of one strip are joined: by wires, at the rails' lines, by chassis signs, by tags to other strips.</summary>
internal sealed class StripNets
{
    private readonly NetRoles roles;
    private readonly Dictionary<string, int> ends;
    private readonly HashSet<string> foreign;
    private readonly HashSet<string> outgoing;
    private readonly HashSet<string> single;
    private readonly HashSet<string> chipSupplies;
    private readonly IReadOnlySet<string> tagged;

    /// <param name="band">The strip.</param>
    /// <param name="all">Every symbol of the drawing.</param>
    /// <param name="roles">What each net is.</param>
    /// <param name="outputs">Nets where the signal leaves the unit.</param>
    /// <param name="ports">Nets where a signal goes in or out without a connector: they are named.</param>
    /// <param name="tagged">Pins that get tags of their own, because wires found no way to them.</param>
    public StripNets(
        Band band,
        IReadOnlyList<Symbol> all,
        NetRoles roles,
        IEnumerable<string> outputs,
        IEnumerable<string> ports,
        IReadOnlySet<string> tagged
    )
    {
        this.roles = roles;
        this.tagged = tagged;
        IsSupplyStrip = band.IsSupply;
        HashSet<Symbol> own = [.. band.Symbols];
        ends = band
            .Symbols.SelectMany(s => s.Pins)
            .Where(p => !tagged.Contains(p.Name))
            .GroupBy(p => p.Net)
            .ToDictionary(g => g.Key, g => g.Count());
        foreign = [.. all.Where(s => !own.Contains(s)).SelectMany(s => s.Pins).Select(p => p.Net)];
        foreign.UnionWith(band.Symbols.SelectMany(s => s.Pins).Where(p => tagged.Contains(p.Name)).Select(p => p.Net));
        foreign.UnionWith(ports.Where(ends.ContainsKey));
        foreign.Remove(NetTable.Ground);
        outgoing = [.. outputs];
        chipSupplies =
        [
            .. band.Symbols.Where(s => s is BoxSymbol { IsChipSupply: true }).SelectMany(s => s.Pins).Select(p => p.Name),
        ];
        foreign.UnionWith(
            band.Symbols.SelectMany(s => s.Pins)
                .Where(p => chipSupplies.Contains(p.Name) && p.Net != NetTable.Ground)
                .Select(p => p.Net)
        );
        single = [.. ends.Where(e => e.Value == 1).Select(e => e.Key)];
    }

    public bool IsSupplyStrip { get; }

    /// <summary>Nets that this strip joins by wires and shares with others: each needs a tag.</summary>
    public IEnumerable<string> NeedTags => foreign.Where(n => !IsLine(n) && Wired(n) > 0).Order(StringComparer.Ordinal);

    public bool IsOutgoing(string net) => outgoing.Contains(net);

    public PinTie TieOf(SymbolPin pin)
    {
        if (pin.Net == NetTable.Ground)
        {
            return PinTie.Chassis;
        }

        if (tagged.Contains(pin.Name) || chipSupplies.Contains(pin.Name))
        {
            return PinTie.Tag;
        }

        if (IsLine(pin.Net))
        {
            return PinTie.RailLine;
        }

        return !single.Contains(pin.Net) ? PinTie.Wire
            : foreign.Contains(pin.Net) ? PinTie.Tag
            : PinTie.Alone;
    }

    private bool IsLine(string net) => !IsSupplyStrip && roles.IsRail(net);

    private int Wired(string net) => single.Contains(net) ? 0 : ends.GetValueOrDefault(net);
}
