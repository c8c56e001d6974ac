using Slowglow.Quantities;
using Slowglow.Sheets.Parts.Resistor;

namespace Slowglow.Drawing.Symbols;

/// <summary>IEC 60617 04-01-01 (box), or the zigzag of IEEE 315 2.1.</summary>
internal sealed class ResistorSymbol(ResistorPart part, bool zigzag)
    : TwoEnded(part, Engineering.Drawing(part.Ohms), zigzag ? Zigzag() : Box())
{
    internal static IEnumerable<Stroke> Box() => [.. Leads(1.25), Line.Box(-0.5, -1.25, 0.5, 1.25)];

    internal static IEnumerable<Stroke> Zigzag() =>
        [.. Leads(1.2), Line.Of((0, -1.2), (0.5, -1), (-0.5, -0.6), (0.5, -0.2), (-0.5, 0.2), (0.5, 0.6), (-0.5, 1), (0, 1.2))];
}
