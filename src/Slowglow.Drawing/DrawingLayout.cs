using Slowglow.Drawing.Layout;
using Slowglow.Drawing.Stages;
using Slowglow.Drawing.Strips;
using Slowglow.Sheets;

namespace Slowglow.Drawing;

/// <summary>
/// A sheet laid out: symbols and wires at their places. It depends on the sheet and the potentials alone, so that figures can be written
/// on it again and again without anything moving.
/// </summary>
public sealed class DrawingLayout
{
    internal DrawingLayout(Sheet sheet, DrawingStyle style, NetRoles roles, IReadOnlyList<Strip> strips)
    {
        Sheet = sheet;
        Style = style;
        Roles = roles;
        Strips = strips;
    }

    public Sheet Sheet { get; }

    /// <summary>How its symbols are drawn.</summary>
    public DrawingStyle Style { get; }

    /// <summary>Places where two wires cross.</summary>
    public int Crossings => Strips.Sum(s => s.Wired.Crossings);

    /// <summary>Net names standing in for wires.</summary>
    public int Tags =>
        Strips.Sum(s =>
            s.Wired.Tags.Count
            + s.Wired.Placed.Sum(p => p.Attachments.Count(a => a.Tie == PinTie.Tag) + (p.Symbol is Symbols.TagSymbol ? 1 : 0))
        );
    internal NetRoles Roles { get; }
    internal IReadOnlyList<Strip> Strips { get; }
}
