using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Devices;
using Slowglow.Sheets.Parts.Transistor;

namespace Slowglow.Drawing.Symbols;

/// <summary>Junction FET (IEC 60617 05-05-09, -10) and enhancement MOSFET (05-05-13, -14).</summary>
internal sealed class FieldEffectSymbol : ActiveSymbol
{
    public FieldEffectSymbol(Section section, TransistorPart part)
        : base(section, part.Device.Type)
    {
        var positive = part.Device["polarity"] > 0;
        Pins = [At("d", 1, -3, Heading.Up, false), At("g", -3, 0, Heading.Left, false), At("s", 1, 3, Heading.Down, false)];
        Inputs = Nets("g", "s");
        Outputs = Nets("d", "s");
        Body = new(-2, -2, 2, 2);
        Turning = Turning.Flip;
        Strokes =
        [
            new Ring(0.15, 0, 1.75, Fill.Paper),
            .. part.Device.Kind == DeviceKind.Jfet ? Junction(positive) : Insulated(positive),
        ];
    }

    private static IEnumerable<Stroke> Junction(bool positive) =>
        [
            Line.Of((-0.2, -1.1), (-0.2, 1.1)),
            Line.Of((1, -3), (1, -0.7), (-0.2, -0.7)),
            Line.Of((1, 3), (1, 0.7), (-0.2, 0.7)),
            Line.Of((-3, 0), (-0.2, 0)),
            .. positive ? Line.Arrow((-1.6, 0), (-0.25, 0), 0.65) : Line.Arrow((-0.3, 0), (-1.1, 0), 0.65),
        ];

    private static IEnumerable<Stroke> Insulated(bool positive) =>
        [
            Line.Of((-3, 0), (-0.8, 0)),
            Line.Of((-0.8, -1), (-0.8, 1)),
            Line.Of((-0.4, -1.15), (-0.4, -0.5)),
            Line.Of((-0.4, -0.3), (-0.4, 0.3)),
            Line.Of((-0.4, 0.5), (-0.4, 1.15)),
            Line.Of((1, -3), (1, -0.8), (-0.4, -0.8)),
            Line.Of((1, 3), (1, 0.8), (-0.4, 0.8)),
            .. positive ? Line.Arrow((1, 0), (-0.35, 0), 0.55) : Line.Arrow((-0.4, 0), (0.9, 0), 0.55),
            Line.Of((1, 0), (1, 0.8)),
        ];
}
