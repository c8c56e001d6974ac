using Slowglow.Quantities;
using Slowglow.Sheets.Parts.Inductor;

namespace Slowglow.Drawing.Symbols;

/// <summary>IEC 60617 04-03-01; with a core line (04-03-03) from a tenth of a henry up.</summary>
internal sealed class InductorSymbol(InductorPart part)
    : TwoEnded(part, Engineering.Drawing(part.Henries, "H"), Coil(part.Henries >= 0.1))
{
    private static IEnumerable<Stroke> Coil(bool core) =>
        [.. Leads(1.5), Curve.Winding(0, -1.5, 1.5, 4, 1), .. core ? new Stroke[] { Line.Of((-0.4, -1.5), (-0.4, 1.5)) } : []];
}
