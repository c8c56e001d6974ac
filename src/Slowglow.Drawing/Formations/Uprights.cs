using Slowglow.Drawing.Stages;
using Slowglow.Drawing.Symbols;
using Slowglow.Sheets;
using Slowglow.Sheets.Parts.Resistor;

namespace Slowglow.Drawing.Formations;

/// <summary>Finds the parts of a strip that stand in its stages' current: valves, transistors, their loads and what is below them.</summary>
internal sealed class Uprights
{
    /// <summary>Amperes; below it a resistor biases or couples. Common practice, no source.</summary>
    private const double StandingCurrent = 30e-6;

    /// <summary>Volts from collector to emitter below which nothing is amplified. Common practice, no source.</summary>
    private const double LeastVolts = 0.03;

    private readonly NetRoles roles;
    private readonly List<Upright> found = [];
    private readonly HashSet<string> controls;
    private readonly HashSet<string> upper = [];
    private readonly HashSet<string> lower = [];

    public Uprights(IReadOnlyList<Symbol> symbols, NetRoles roles)
    {
        this.roles = roles;
        ActiveSymbol[] actives =
        [
            .. symbols
                .OfType<ActiveSymbol>()
                .Where(s => s is TransistorSymbol or FieldEffectSymbol or TriodeSymbol or PentodeSymbol),
        ];
        controls = [.. actives.Select(a => a.Pins[1].Net)];
        found.AddRange(actives.Where(Conducts).Select(Standing));
        found.ForEach(Note);
        AddResistors([.. symbols.OfType<ResistorSymbol>()]);
    }

    public IReadOnlyList<Upright> All => found;

    /// <summary>Not one that serves as a switch or a variable resistor, without standing volts across it.</summary>
    private bool Conducts(ActiveSymbol active)
    {
        var (first, last) = (active.Pins[0].Net, active.Pins[2].Net);
        return first != last && !(Math.Abs(roles.Height(first) - roles.Height(last)) < LeastVolts);
    }

    private Upright Standing(ActiveSymbol active)
    {
        var (first, last) = (active.Pins[0].Net, active.Pins[2].Net);
        var turned = active is TransistorSymbol or FieldEffectSymbol && roles.Height(last) > roles.Height(first) + 0.02;
        return new(active, turned ? last : first, turned ? first : last, turned, 0);
    }

    private void Note(Upright upright)
    {
        upper.Add(upright.Top);
        lower.Add(upright.Bottom);
    }

    /// <summary>From the electrodes outward: loads, emitter resistors, tails, until nothing more carries their current.</summary>
    private void AddResistors(List<ResistorSymbol> waiting)
    {
        for (var grown = true; grown; )
        {
            Upright[] next = [.. waiting.Select(s => Standing(s, waiting)).OfType<Upright>()];
            waiting.RemoveAll(s => Array.Exists(next, u => u.Symbol == s));
            found.AddRange(next);
            Array.ForEach(next, Note);
            grown = next.Length > 0;
        }
    }

    private Upright? Standing(ResistorSymbol symbol, List<ResistorSymbol> others)
    {
        var (a, b) = (symbol.Pins[0].Net, symbol.Pins[1].Net);
        return a == b ? null : Hung(symbol, a, b, false, others) ?? Hung(symbol, b, a, true, others);
    }

    /// <summary>Null unless it hangs with this end up: under an electrode, over one, or between two.</summary>
    private Upright? Hung(ResistorSymbol symbol, string top, string bottom, bool turned, List<ResistorSymbol> others)
    {
        var under = IsNode(top) && lower.Contains(top);
        var over = IsNode(bottom) && upper.Contains(bottom);
        if ((!under && !over) || controls.Contains(top) || controls.Contains(bottom) || IsUpsideDown(top, bottom))
        {
            return null;
        }

        var drop = Math.Abs(roles.Height(top) - roles.Height(bottom));
        var amperes = symbol.Part is ResistorPart part && double.IsFinite(drop) ? drop / part.Ohms : 0;
        var ends = roles.IsSupply(under ? bottom : top) || (under && over);
        var shares = others.Exists(o => o != symbol && Joins(o, under ? bottom : top));
        return ends || shares || (drop > 0.5 && amperes > StandingCurrent) ? new(symbol, top, bottom, turned, amperes) : null;
    }

    /// <summary>An emitter resistor whose far end carries another one, of the twin or of the other half.</summary>
    private bool Joins(ResistorSymbol other, string net) =>
        !roles.IsSupply(net)
        && other.Pins.Any(p => p.Net == net)
        && other.Pins.Any(p =>
            p.Net != net && IsNode(p.Net) && !controls.Contains(p.Net) && (upper.Contains(p.Net) || lower.Contains(p.Net))
        );

    private bool IsNode(string net) => !roles.IsSupply(net);

    private bool IsUpsideDown(string top, string bottom) =>
        roles.Height(bottom) > roles.Height(top) + 0.02 && !(top == NetTable.Ground && bottom == NetTable.Ground);
}
