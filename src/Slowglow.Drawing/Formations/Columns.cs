using Slowglow.Drawing.Stages;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Formations;

/// <summary>Links what stands into columns, one current from top to bottom, and finds the twins that share a tail.</summary>
internal sealed class Columns
{
    private readonly IReadOnlyList<Upright> uprights;
    private readonly IReadOnlyList<WireSymbol> wires;
    private readonly Dictionary<Upright, Upright> below = [];
    private readonly Dictionary<Upright, Upright> above = [];
    private readonly List<Twins> twins = [];

    public Columns(IReadOnlyList<Upright> uprights, IReadOnlyList<WireSymbol> wires, NetRoles roles)
    {
        this.uprights = uprights;
        this.wires = wires;
        foreach (var net in uprights.SelectMany(u => new[] { u.Top, u.Bottom }).Distinct().Where(n => !roles.IsSupply(n)))
        {
            Link(net);
        }
    }

    public IReadOnlyList<Twins> Pairs => twins;

    /// <summary>The column that a part stands in, from the top.</summary>
    public IReadOnlyList<Upright> Of(Upright one)
    {
        var first = one;
        for (var steps = 0; above.TryGetValue(first, out var up) && up != one && steps < uprights.Count; steps++)
        {
            first = up;
        }

        List<Upright> column = [first];
        while (below.TryGetValue(column[^1], out var next) && !column.Contains(next))
        {
            column.Add(next);
        }

        return column;
    }

    private void Link(string net)
    {
        Upright[] over = [.. uprights.Where(u => u.Bottom == net)];
        Upright[] under = [.. uprights.Where(u => u.Top == net)];
        var hanging = TwinsOf(under, net, true);
        var standing = TwinsOf(over, net, false);
        if (hanging is not null || standing is not null)
        {
            var pair = (hanging ?? standing)!;
            twins.Add(pair with { Tail = Main(hanging is null ? under : over) });
        }
        else if (Main(over) is { } one && Main(under) is { } other && one != other)
        {
            below[one] = other;
            above[other] = one;
        }
    }

    /// <summary>Two alike with a wire between their emitters count as joined there.</summary>
    private Twins? TwinsOf(Upright[] side, string net, bool top)
    {
        var led = side.Select(u => (Upright: u, Active: Led(u, top))).Where(p => p.Active is not null).ToArray();
        if (led.Length == 2)
        {
            return AreAlike(led[0].Active!, led[1].Active!) ? new(led[0].Upright, led[1].Upright, top, null, null) : null;
        }

        if (led is not [var single] || single.Active != single.Upright)
        {
            return null;
        }

        foreach (var wire in wires.Where(w => w.Pins.Any(p => p.Net == net)))
        {
            var far = wire.Pins.First(p => p.Net != net).Net;
            Upright[] others = [.. uprights.Where(u => u.IsActive && u.End(top) == far)];
            var hasOther = twins.Exists(t => t.Wire == wire);
            if (!hasOther && others is [var other] && AreAlike(single.Active!, other) && uprights.Any(u => u.End(!top) == net))
            {
                return new(single.Upright, other, top, null, wire);
            }
        }

        return null;
    }

    private Upright? Led(Upright upright, bool top)
    {
        if (upright.IsActive)
        {
            return upright;
        }

        var far = upright.End(!top);
        return uprights.FirstOrDefault(u => u.IsActive && u.End(top) == far);
    }

    /// <summary>Same kind, standing the same way up, joined at emitter or cathode. Power valves of a push-pull pair stand one above the other.</summary>
    private bool AreAlike(Upright a, Upright b) =>
        a != b
        && !AreJoined(a.Control!, b.Control!)
        && a.Symbol.GetType() == b.Symbol.GetType()
        && a.Symbol is not PentodeSymbol
        && a.IsTurned == b.IsTurned
        && a.Symbol is ActiveSymbol one
        && b.Symbol is ActiveSymbol other
        && one.Words.Skip(1).SequenceEqual(other.Words.Skip(1));

    /// <summary>Two with their inputs joined are one valve twice, not a pair.</summary>
    private bool AreJoined(string a, string b)
    {
        HashSet<string> reached = [a];
        for (var before = 0; before < reached.Count; )
        {
            before = reached.Count;
            reached.UnionWith(
                wires.Where(w => w.Pins.Any(p => reached.Contains(p.Net))).SelectMany(w => w.Pins).Select(p => p.Net)
            );
        }

        return reached.Contains(b);
    }

    /// <summary>An active part first, one that another of them drives before its driver; then the resistor with the most current.</summary>
    private static Upright? Main(Upright[] side) =>
        side.OrderByDescending(u => u.IsActive)
            .ThenByDescending(u =>
                u.IsActive && side.Any(o => o != u && o.IsActive && (o.Top == u.Control || o.Bottom == u.Control))
            )
            .ThenByDescending(u => u.Amperes)
            .FirstOrDefault();
}
