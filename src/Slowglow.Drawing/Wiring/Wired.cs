using Slowglow.Drawing.Layout;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Wiring;

/// <summary>A strip with its wires.</summary>
/// <param name="Placed">Symbols, without tags that proved needless.</param>
/// <param name="Tags">Added where wires found no good way.</param>
/// <param name="Stranded">Pins for whose tags there was no room: the strip has to be laid out again with tags on them from the start.</param>
/// <param name="Failed">Nets that wires did not join altogether.</param>
/// <param name="Crossings">Places where two wires cross.</param>
internal sealed record Wired(
    IReadOnlyList<Placed> Placed,
    IReadOnlyList<Run> Runs,
    IReadOnlyList<RailLine> Rails,
    IReadOnlyList<Attachment> Tags,
    IReadOnlyList<SymbolPin> Stranded,
    IReadOnlyList<string> Failed,
    int Crossings
)
{
    /// <summary>Nets whose name stands on the strip already.</summary>
    public IEnumerable<string> Named =>
        Rails
            .Select(r => r.Net)
            .Concat(Tags.Select(t => t.Net))
            .Concat(Placed.Select(p => p.Symbol).OfType<TagSymbol>().Select(t => t.Net))
            .Concat(Placed.SelectMany(p => p.Attachments).Where(a => a.Tie == PinTie.Tag).Select(a => a.Net));
}
