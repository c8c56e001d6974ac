using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Parts.Optocoupler;

namespace Slowglow.Drawing.Symbols;

/// <summary>LED to the left, light-dependent resistor (IEC 60617 05-06-01) to the right, in one case.</summary>
internal sealed class OptocouplerSymbol : ActiveSymbol
{
    public OptocouplerSymbol(Section section, OptocouplerPart part)
        : base(section, part.Device.Type)
    {
        Pins =
        [
            At("a", -4, -2, Heading.Left),
            At("k", -4, 2, Heading.Left),
            At("ra", 4, -2, Heading.Right),
            At("rb", 4, 2, Heading.Right),
        ];
        Inputs = Nets("a", "k");
        Outputs = Nets("ra", "rb");
        Body = new(-3, -3, 3, 3);
        Turning = Turning.Flip;
        Label = LabelSide.Above;
        Strokes =
        [
            Line.Box(-3, -3, 3, 3),
            Line.Of((-4, -2), (-1.8, -2), (-1.8, 2), (-4, 2)),
            Line.Shape((-2.5, -0.6), (-1.1, -0.6), (-1.8, 0.6)),
            Line.Of((-2.5, 0.6), (-1.1, 0.6)),
            Line.Of((4, -2), (1.6, -2), (1.6, 2), (4, 2)),
            Line.Box(1.15, -1.2, 2.05, 1.2),
            .. Line.Arrow((-0.7, -0.3), (0.7, -0.3), 0.4),
            .. Line.Arrow((-0.7, 0.4), (0.7, 0.4), 0.4),
        ];
    }
}
