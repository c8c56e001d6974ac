using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts.Transistor;

namespace Slowglow.Drawing.Symbols;

/// <summary>Bipolar transistors: IEC 60617 05-05-01 and -02, in its envelope; a Darlington with a double bar.</summary>
internal sealed class TransistorSymbol : ActiveSymbol
{
    public TransistorSymbol(Section section, TransistorPart part)
        : base(section, part.Device.Type)
    {
        var npn = part.Device["polarity"] > 0;
        Pins = [At("c", 1, -3, Heading.Up, false), At("b", -3, 0, Heading.Left, false), At("e", 1, 3, Heading.Down, false)];
        Inputs = Nets("b", "e");
        Outputs = Nets("c", "e");
        Body = new(-2, -2, 2, 2);
        Turning = Turning.Flip;
        Strokes =
        [
            new Ring(0.15, 0, 1.75, Fill.Paper),
            Line.Of((-3, 0), (-0.6, 0)),
            Line.Solid((-0.7, -1.1), (-0.5, -1.1), (-0.5, 1.1), (-0.7, 1.1)),
            Line.Of((1, -3), (1, -1.3), (-0.6, -0.45)),
            Line.Of((1, 3), (1, 1.3)),
            .. npn ? Line.Arrow((-0.6, 0.45), (1, 1.3), 0.65) : Line.Arrow((1, 1.3), (-0.5, 0.5), 0.65),
            .. part.Device.Kind == DeviceKind.Darlington ? new Stroke[] { Line.Of((-0.95, -1.1), (-0.95, 1.1)) } : [],
        ];
    }
}
