using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Drawing.Symbols;

/// <summary>A gas-filled regulator: a dot for the gas, a cold cathode.</summary>
internal sealed class GasRegulatorSymbol : Symbol
{
    public GasRegulatorSymbol(Section section, ValvePart part)
        : base(part, part.Designator, [part.Device.Type])
    {
        var (anode, cathode) = (section.Pins["a"], section.Pins["k"]);
        Pins =
        [
            new(section.PinName("a"), anode.Net, new(0, -3), Heading.Up, anode.Number),
            new(section.PinName("k"), cathode.Net, new(0, 3), Heading.Down, cathode.Number),
        ];
        Body = new(-2, -2, 2, 2);
        Turning = Turning.Flip;
        Strokes =
        [
            .. ValveStrokes.Envelope(),
            .. ValveStrokes.Anode(),
            new Ring(0, 0.9, 0.4, Fill.Paper),
            Line.Of((0, 1.3), (0, 3)),
            new Ring(1.1, 0.9, 0.2, Fill.Ink),
        ];
    }
}
