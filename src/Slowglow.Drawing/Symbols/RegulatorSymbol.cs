using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Parts.Regulator;

namespace Slowglow.Drawing.Symbols;

/// <summary>A three-terminal regulator: in at the left, out at the right, reference below.</summary>
internal sealed class RegulatorSymbol : Symbol
{
    public RegulatorSymbol(Section section, RegulatorPart part)
        : base(part, part.Designator, [part.Device.Type])
    {
        var reference = section.Pins.ContainsKey("adj") ? "adj" : "gnd";
        Pins =
        [
            Of(section, "in", -4, 0, Heading.Left),
            Of(section, "out", 4, 0, Heading.Right),
            Of(section, reference, 0, 3, Heading.Down),
        ];
        Body = new(-3, -2, 3, 2);
        Turning = Turning.Flip;
        Label = LabelSide.Above;
        Strokes =
        [
            Line.Box(-3, -2, 3, 2),
            Line.Of((-4, 0), (-3, 0)),
            Line.Of((3, 0), (4, 0)),
            Line.Of((0, 2), (0, 3)),
            new Writing(-2.1, 0.35, "in", "inside"),
            new Writing(1.8, 0.35, "out", "inside"),
        ];
    }

    private static SymbolPin Of(Section section, string electrode, int x, int y, Heading heading) =>
        new(section.PinName(electrode), section.Pins[electrode].Net, new(x, y), heading, section.Pins[electrode].Number);
}
