using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Parts;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Drawing.Symbols;

/// <summary>A rectifier valve with one or two anodes; the far end of a filament beside its cathode.</summary>
internal sealed class RectifierValveSymbol : Symbol
{
    public RectifierValveSymbol(Section section, ValvePart part, IReadOnlyList<Pin> anodes)
        : base(part, part.Designator, [part.Device.Type])
    {
        Section = section;
        var two = anodes.Count > 1;
        var filament = section.Pins.GetValueOrDefault("f");
        Pins =
        [
            Of(anodes[0], two ? -1 : 0, -3, Heading.Up),
            .. two ? new[] { Of(anodes[1], 1, -3, Heading.Up) } : [],
            Of(section.Pins["k"], filament is null ? 0 : -1, 3, Heading.Down),
            .. filament is null ? new SymbolPin[] { } : [Of(filament, 1, 3, Heading.Down)],
        ];
        Body = new(-2, -2, 2, 2);
        Turning = Turning.Flip;
        Strokes =
        [
            .. ValveStrokes.Envelope(),
            .. two ? Plate(-1).Concat(Plate(1)) : ValveStrokes.Anode(),
            .. filament is null ? ValveStrokes.Cathode() : [Line.Of((-1, 3), (-1, 1.4), (0, 0.5), (1, 1.4), (1, 3))],
        ];
    }

    public Section Section { get; }

    private static IEnumerable<Stroke> Plate(int x) =>
        [Line.Of((x, -3), (x, -1)), Line.Solid((x - 0.6, -1.1), (x + 0.6, -1.1), (x + 0.6, -0.85), (x - 0.6, -0.85))];

    private SymbolPin Of(Pin pin, int x, int y, Heading heading) =>
        new($"{Part!.Designator}.{pin.Number}", pin.Net, new(x, y), heading, pin.Number);
}
