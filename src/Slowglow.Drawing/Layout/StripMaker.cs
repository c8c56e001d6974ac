using Slowglow.Drawing.Stages;
using Slowglow.Drawing.Symbols;
using Slowglow.Drawing.Wiring;
using Slowglow.Sheets;

namespace Slowglow.Drawing.Layout;

/// <summary>Lays one strip out and wires it, again with more tags until everything is joined.</summary>
internal sealed class StripMaker(Sheet sheet, IReadOnlyList<Symbol> all, NetRoles roles, Func<string, int> depth)
{
    public Strip Make(Band band, CancellationToken cancel)
    {
        HashSet<string> tagged = [];
        for (var attempt = 1; ; attempt++)
        {
            var nets = new StripNets(band, all, roles, sheet.Signals.Select(s => s.Out), Ports(), tagged);
            IReadOnlyList<Symbol> symbols = [.. band.Symbols, .. nets.NeedTags.Select(n => new TagSymbol(n))];
            var ordering = new PlacingOrder(roles, depth, band.IsSupply);
            var placed = new Placer(
                symbols,
                new Stances(roles, depth, nets),
                ordering,
                attempt == 1 || symbols.Count < 60 ? 3 : 1,
                cancel
            ).Place();
            var wired = Wire(placed, cancel);
            if (wired.Stranded.Count == 0)
            {
                return new Strip(band.IsSupply, wired);
            }

            // One pin at a time at first; when that does not help, everything that its net holds; in the end everything.
            tagged.UnionWith(
                attempt < 3 ? wired.Stranded.Select(p => p.Name)
                : attempt < 4 ? PinsOn(band, wired.Stranded.Select(p => p.Net).ToHashSet())
                : band.Symbols.SelectMany(s => s.Pins).Select(p => p.Name)
            );
        }
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

    private static int Faults(Wired wired) => (100 * wired.Stranded.Count) + (10 * wired.Failed.Count) + wired.Crossings;
}
