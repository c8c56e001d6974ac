using Slowglow.Drawing.Grid;
using Slowglow.Quantities;
using Slowglow.Sheets.Parts.Pot;

namespace Slowglow.Drawing.Symbols;

/// <summary>IEC 60617 04-01-07: top, wiper from the right, bottom. A trimmer's arrow ends in a bar (04-01-09).</summary>
internal sealed class PotSymbol : Symbol
{
    public PotSymbol(PotPart part, bool zigzag)
        : base(part, part.Designator, [Engineering.Drawing(part.Ohms), part.ControlName ?? ""])
    {
        var name = part.Designator;
        Pins =
        [
            new($"{name}.{part.Pins[0].Number}", part.Pins[0].Net, new(0, -2), Heading.Up),
            new($"{name}.{part.Pins[1].Number}", part.Pins[1].Net, new(2, 0), Heading.Right),
            new($"{name}.{part.Pins[2].Number}", part.Pins[2].Net, new(0, 2), Heading.Down),
        ];
        Body = new(-1, -1, 1, 1);
        Turning = Turning.Flip;
        Label = LabelSide.Behind;
        Strokes =
        [
            .. zigzag ? ResistorSymbol.Zigzag() : ResistorSymbol.Box(),
            .. part.IsTrimmer ? [Line.Of((2, 0), (0.5, 0)), Line.Of((0.5, -0.4), (0.5, 0.4))] : Line.Arrow((2, 0), (0.5, 0), 0.6),
        ];
    }
}
