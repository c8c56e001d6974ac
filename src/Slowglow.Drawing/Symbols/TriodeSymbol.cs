using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Parts.Valve;

namespace Slowglow.Drawing.Symbols;

/// <summary>A triode section, IEEE 315 7.3 / IEC 60617 05-11: anode on top, grid from the left, cathode below.</summary>
internal sealed class TriodeSymbol : ActiveSymbol
{
    public TriodeSymbol(Section section, ValvePart part)
        : base(section, part.Device.Type)
    {
        Pins = [At("a", 0, -3, Heading.Up), At("g", -3, 0, Heading.Left), At("k", 0, 3, Heading.Down)];
        Inputs = Nets("g", "k");
        Outputs = Nets("a", "k");
        Body = new(-2, -2, 2, 2);
        Turning = Turning.Mirror;
        Strokes = [.. ValveStrokes.Envelope(), .. ValveStrokes.Anode(), .. ValveStrokes.Cathode(), .. ValveStrokes.Grid(0)];
    }
}
