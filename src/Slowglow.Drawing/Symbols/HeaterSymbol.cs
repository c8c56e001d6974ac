using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Parts;

namespace Slowglow.Drawing.Symbols;

/// <summary>A valve's heater, drawn with the supply; its tap in the middle.</summary>
internal sealed class HeaterSymbol : Symbol
{
    public HeaterSymbol(Part part, IReadOnlyList<Pin> ends, Pin? tap)
        : base(part, part.Designator, ["heater"])
    {
        Pins =
        [
            Of(ends[0], -3, 0, Heading.Left),
            Of(ends[1], 3, 0, Heading.Right),
            .. tap is null ? new SymbolPin[] { } : [Of(tap, 0, 2, Heading.Down)],
        ];
        Body = new(-2, -1, 2, 1);
        Turning = Turning.Mirror;
        Label = LabelSide.Above;
        Strokes =
        [
            Line.Of((-3, 0), (-1.6, 0), (-0.8, -0.9), (0, 0), (0.8, -0.9), (1.6, 0), (3, 0)),
            .. tap is null ? new Stroke[] { } : [Line.Of((0, 0), (0, 2))],
        ];
    }

    private SymbolPin Of(Pin pin, int x, int y, Heading heading) =>
        new($"{Part!.Designator}.{pin.Number}", pin.Net, new(x, y), heading, pin.Number);
}
