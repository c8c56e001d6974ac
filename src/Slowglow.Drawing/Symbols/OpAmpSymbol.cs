using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Parts.OpAmp;

namespace Slowglow.Drawing.Symbols;

/// <summary>An op-amp section as a triangle; its supply pins are drawn once a package, in the supply strip.</summary>
internal sealed class OpAmpSymbol : ActiveSymbol
{
    public OpAmpSymbol(Section section, OpAmpPart part)
        : base(section, part.Device.Type)
    {
        Pins = [At("in-", -4, -2, Heading.Left), At("in+", -4, 2, Heading.Left), At("out", 4, 0, Heading.Right)];
        Inputs = Nets("in-", "in+");
        Outputs = Nets("out");
        Body = new(-3, -3, 3, 3);
        Turning = Turning.Flip;
        Label = LabelSide.Corner;
        Strokes =
        [
            Line.Shape((-3, -3.4), (3.2, 0), (-3, 3.4)),
            Line.Of((-4, -2), (-3, -2)),
            Line.Of((-4, 2), (-3, 2)),
            Line.Of((3.2, 0), (4, 0)),
            Line.Of((-2.6, -2), (-1.9, -2)),
            Line.Of((-2.6, 2), (-1.9, 2)),
            Line.Of((-2.25, 1.65), (-2.25, 2.35)),
        ];
    }
}
