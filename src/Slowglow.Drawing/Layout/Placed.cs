using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Layout;

/// <summary>A stance at its place on the strip.</summary>
internal sealed class Placed
{
    public Placed(Stance stance, Cell origin)
    {
        Stance = stance;
        Origin = origin;
        Pins = [.. stance.Pins.Select(p => p with { At = p.At + origin })];
        Rooms = [.. stance.Rooms.Select(r => r.Moved(origin))];
        Outline = stance.Outline.Moved(origin);
    }

    public Stance Stance { get; }
    public Cell Origin { get; }
    public Symbol Symbol => Stance.Symbol;
    public IReadOnlyList<PlacedPin> Pins { get; }
    public IReadOnlyList<Rect> Rooms { get; }
    public Rect Outline { get; }
    public IEnumerable<Label> Labels => Stance.Labels.Select(l => l.Moved(Origin));
    public IEnumerable<Attachment> Attachments => Stance.Attachments.Select(a => a.Moved(Origin));

    public Placed Moved(Cell by) => new(Stance, Origin + by);
}
