using Slowglow.Quantities;
using Slowglow.Sheets.Parts.Capacitor;

namespace Slowglow.Drawing.Symbols;

/// <summary>IEC 60617 04-02-01; polarised (04-02-05) with a plus and an open plate where the plus end is.</summary>
internal sealed class CapacitorSymbol(CapacitorPart part)
    : TwoEnded(part, Engineering.Drawing(part.Farads, "F"), Plates(part.Style == CapacitorStyle.Electrolytic))
{
    private static IEnumerable<Stroke> Plates(bool polarised) =>
        polarised
            ?
            [
                .. Leads(0.5),
                Line.Box(-0.75, -0.5, 0.75, -0.15),
                Line.Solid((-0.75, 0.15), (0.75, 0.15), (0.75, 0.5), (-0.75, 0.5)),
                new Writing(-0.7, -1, "+", "plus"),
            ]
            : [.. Leads(0.25), Plate(-0.25), Plate(0.25)];

    private static Line Plate(double y) => Line.Of((-0.75, y), (0.75, y));
}
