using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Drawing.Symbols;

/// <summary>A pentode or beam tetrode: control grid from the left, screen from the right, suppressor where it is brought out.</summary>
internal sealed class PentodeSymbol : ActiveSymbol
{
    public PentodeSymbol(Section section, ValvePart part)
        : base(section, part.Device.Type)
    {
        var suppressor = section.Pins.ContainsKey("g3");
        Pins =
        [
            At("a", 0, -3, Heading.Up),
            At("g", -3, 1, Heading.Left),
            At("k", 0, 3, Heading.Down),
            At("g2", 3, 0, Heading.Right),
            .. suppressor ? new[] { At("g3", -3, -1, Heading.Left) } : [],
        ];
        Inputs = Nets("g", "k");
        Outputs = Nets("a", "k", "g2");
        Body = new(-2, -2, 2, 2);
        Turning = Turning.Mirror;
        Label = LabelSide.Corner;
        Strokes =
        [
            .. ValveStrokes.Envelope(),
            .. ValveStrokes.Anode(),
            .. ValveStrokes.Cathode(),
            .. ValveStrokes.Grid(0.6),
            Line.Of((-3, 1), (-1.6, 1), (-1.25, 0.6)),
            .. ValveStrokes.Grid(0, 1),
            .. suppressor
                ? ValveStrokes.Grid(-0.6).Append(Line.Of((-3, -1), (-1.6, -1), (-1.25, -0.6)))
                : [Line.Of((-1.05, -0.6), (-0.5, -0.6)), Line.Of((0.5, -0.6), (1.05, -0.6))],
        ];
        // The level leads of the grids that come from the side start at the bend, not at the pin.
        Strokes = [.. Strokes.Where(s => s is not Line { Points: [(-3, 0.6) or (-3, -0.6), ..] })];
    }
}
