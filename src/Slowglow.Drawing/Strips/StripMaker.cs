using Slowglow.Drawing.Formations;
using Slowglow.Drawing.Layout;
using Slowglow.Drawing.Stages;
using Slowglow.Drawing.Symbols;
using Slowglow.Drawing.Wiring;
using Slowglow.Sheets;

namespace Slowglow.Drawing.Strips;

/// <summary>Lays one strip out and wires it, again with more tags until everything is joined.</summary>
internal sealed class StripMaker(Sheet sheet, IReadOnlyList<Symbol> all, NetRoles roles, Func<string, int> depth)
{
    /// <summary>How often a strip is tried with its formations before they are given up.</summary>
    private const int Formed = 6;

    /// <summary>Annoyance below which a strip is not tried again.</summary>
    private const int Fair = 12;

    public Strip Make(Band band, CancellationToken cancel)
    {
        var (best, least) = ((Wired?)null, int.MaxValue);
        HashSet<string> tagged = [];
        for (var attempt = 1; attempt <= Formed; attempt++)
        {
            var wired = Try(band, tagged, attempt > 1 ? 4 : 0, 3, cancel);
            var annoyance = Annoyance(wired) + (4 * tagged.Count);
            var isBetter = wired.Stranded.Count == 0 && annoyance < least;
            if (isBetter)
            {
                (best, least) = (wired, annoyance);
            }

            var before = tagged.Count;
            tagged.UnionWith(wired.Stranded.Select(p => p.Name));
            tagged.UnionWith(band.IsSupply || attempt > 2 ? [] : Tagged(wired));
            if (least < Fair || (best is not null && !isBetter) || tagged.Count == before)
            {
                break;
            }
        }

        return new Strip(band.IsSupply, best ?? Plain(band, cancel));
    }

    /// <summary>Pins that the wirer gave tags, because no way to them was good.</summary>
    private static IEnumerable<string> Tagged(Wired wired)
    {
        var at = wired.Tags.Select(t => t.Lead[0]).ToHashSet();
        return wired
            .Placed.Where(p => p.Symbol is not TagSymbol)
            .SelectMany(p => p.Pins)
            .Where(p => at.Contains(p.At))
            .Select(p => p.Pin.Name);
    }

    /// <summary>Without formations, with more and more tags.</summary>
    private Wired Plain(Band band, CancellationToken cancel)
    {
        HashSet<string> tagged = [];
        for (var attempt = 1; ; attempt++)
        {
            var wired = Try(band, tagged, null, attempt == 1 || band.Symbols.Count < 60 ? 3 : 1, cancel);
            if (wired.Stranded.Count == 0)
            {
                return wired;
            }

            // One pin at a time at first; when that does not help, everything that its net holds; in the end everything.
            tagged.UnionWith(
                attempt < 3 ? wired.Stranded.Select(p => p.Name)
                : attempt < 4 ? PinsOn(band, wired.Stranded.Select(p => p.Net).ToHashSet())
                : band.Symbols.SelectMany(s => s.Pins).Select(p => p.Name)
            );
        }
    }

    /// <param name="slack">Columns more than need be in formations; null for none.</param>
    private Wired Try(Band band, HashSet<string> tagged, int? slack, int rounds, CancellationToken cancel)
    {
        var nets = new StripNets(band, all, roles, sheet.Signals.Select(s => s.Out), Ports(), tagged);
        IReadOnlyList<Symbol> symbols = [.. band.Symbols, .. nets.NeedTags.Select(n => new TagSymbol(n))];
        var stances = Standing(symbols, new Stances(roles, depth, nets), band.IsSupply ? null : slack);
        return new Placer(stances, new PlacingOrder(roles, depth, band.IsSupply), rounds, cancel)
            .Places()
            .Select(p => Wire(p, cancel))
            .MinBy(Annoyance)!;
    }

    /// <summary>How every symbol may stand; those of a formation only together.</summary>
    private Dictionary<Symbol, IReadOnlyList<Stance>> Standing(IReadOnlyList<Symbol> symbols, Stances stances, int? slack)
    {
        var alone = symbols.ToDictionary(s => s, stances.Of);
        var formations = slack is { } columns ? new FormationFinder(symbols, roles, depth, s => alone[s], columns).Find() : [];
        HashSet<Symbol> taken = [.. formations.SelectMany(f => f.Formation.Members)];
        return symbols
            .Where(s => !taken.Contains(s))
            .Select(s => (Symbol: s, Stances: alone[s]))
            .Concat(formations.Select(f => (Symbol: (Symbol)f.Formation, f.Stances)))
            .ToDictionary(s => s.Symbol, s => s.Stances);
    }

    private IEnumerable<string> Ports()
    {
        var connected = all.OfType<ConnectorSymbol>().SelectMany(c => c.Pins).Select(p => p.Net).ToHashSet();
        return sheet.Signals.SelectMany(s => new[] { s.In, s.Out }).Where(n => !connected.Contains(n));
    }

    private static IEnumerable<string> PinsOn(Band band, HashSet<string> nets) =>
        band.Symbols.SelectMany(s => s.Pins).Where(p => nets.Contains(p.Net)).Select(p => p.Name);

    /// <summary>Wires the strip, again with the nets first that found no way; keeps the best.</summary>
    private Wired Wire(IReadOnlyList<Placed> placed, CancellationToken cancel)
    {
        List<string> first = [];
        Wired? best = null;
        for (var attempt = 0; attempt < 4; attempt++)
        {
            var wired = new Wirer(placed, roles, cancel).Run(first);
            if (best is null || Faults(wired) < Faults(best))
            {
                best = wired;
            }

            string[] failed = [.. wired.Failed.Where(n => !first.Contains(n))];
            if (failed.Length == 0)
            {
                break;
            }

            first.InsertRange(0, failed);
        }

        return best!;
    }

    /// <summary>Of two places for the same symbols: a net name instead of a wire annoys like two or three crossings. Judgement, no source.</summary>
    private static int Annoyance(Wired wired) => (5 * wired.Stranded.Count) + (3 * wired.Failed.Count) + wired.Crossings;

    private static int Faults(Wired wired) => (100 * wired.Stranded.Count) + (10 * wired.Failed.Count) + wired.Crossings;
}
