using Slowglow.Drawing.Layout;
using Slowglow.Drawing.Stages;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Formations;

/// <summary>
/// Finds what every service drawing draws in one way: drivers with their output pair, long-tailed pairs with their loads and tail, and any
/// other column in which one current runs through two valves or transistors.
/// </summary>
internal sealed class FormationFinder
{
    private const int Narrowest = 8;
    private const int Widest = 34;

    private readonly Columns columns;
    private readonly IReadOnlyList<Upright> uprights;
    private readonly IReadOnlyList<Symbol> symbols;
    private readonly Func<Symbol, IReadOnlyList<Stance>> stancesOf;
    private readonly Dictionary<string, int> ends;
    private readonly int slack;
    private readonly ColumnMaker maker;
    private readonly TwinMaker twins;
    private readonly HashSet<Symbol> used = [];
    private readonly List<(Formation, IReadOnlyList<Stance>)> found = [];

    /// <param name="slack">Columns more than need be between the halves of a pair, for wires.</param>
    public FormationFinder(
        IReadOnlyList<Symbol> symbols,
        NetRoles roles,
        Func<string, int> depth,
        Func<Symbol, IReadOnlyList<Stance>> stancesOf,
        int slack
    )
    {
        this.slack = slack;
        this.symbols = symbols;
        this.stancesOf = stancesOf;
        uprights = new Uprights(symbols, roles).All;
        columns = new Columns(uprights, [.. symbols.OfType<WireSymbol>()], roles);
        ends = symbols.SelectMany(s => s.Pins).GroupBy(p => p.Net).ToDictionary(g => g.Key, g => g.Count());
        maker = new ColumnMaker(Gap);
        twins = new TwinMaker(columns, maker, depth);
    }

    /// <summary>Formations that do not share a symbol, each with the ways it may stand.</summary>
    public IReadOnlyList<(Formation Formation, IReadOnlyList<Stance> Stances)> Find()
    {
        IReadOnlyList<Upright>[] tall =
        [
            .. uprights.Select(columns.Of).Where(c => c.Count(u => u.IsActive) > 1).DistinctBy(c => c[0]),
        ];
        ResistorSymbol[] resistors = [.. symbols.OfType<ResistorSymbol>()];
        var pairs = tall.SelectMany(d => tall.Select(o => DrivenPair.Of(d, o, resistors))).OfType<DrivenPair>();
        foreach (var pair in pairs)
        {
            Take([.. pair.Symbols], w => new DrivenPairMaker(maker, Gap).Make(pair, w));
        }

        foreach (var pair in columns.Pairs)
        {
            if (twins.PartsOf(pair) is { } parts)
            {
                Symbol[] own = [.. parts.Select(p => p.Symbol)];
                Take(pair.Wire is { } wire ? [.. own, wire] : own, w => twins.Make(pair, w));
            }
        }

        foreach (var column in tall)
        {
            Take([.. column.Select(u => u.Symbol)], _ => maker.Stand(column, _ => false));
        }

        return found;
    }

    /// <summary>Room for a dot and a wire to the side where more than two ends meet.</summary>
    private int Gap(string net) => ends.GetValueOrDefault(net) > 2 ? 4 : 2;

    private void Take(IReadOnlyList<Symbol> own, Func<int, IReadOnlyList<Member>> make)
    {
        if (own.Any(used.Contains))
        {
            return;
        }

        for (var width = Narrowest; width <= Widest; width += 2)
        {
            var members = make(width + slack);
            var formation = new Formation([.. members.Select(m => m.Symbol)]);
            if (Assembly.Of(formation, members, stancesOf, true) is { } stance)
            {
                used.UnionWith(own);
                found.Add((formation, [.. new[] { stance, Assembly.Of(formation, members, stancesOf, false) }.OfType<Stance>()]));
                return;
            }
        }
    }
}
