using Slowglow.Quantities;
using Slowglow.Sheets.Parts.Lamp;

namespace Slowglow.Drawing.Symbols;

/// <summary>IEC 60617 08-10-01.</summary>
internal sealed class LampSymbol(LampPart part)
    : TwoEnded(
        part,
        Engineering.Format(part.RatedVolts, "V"),
        [
            .. Leads(0.95),
            new Ring(0, 0, 0.95, Fill.Paper),
            Line.Of((-0.67, -0.67), (0.67, 0.67)),
            Line.Of((-0.67, 0.67), (0.67, -0.67)),
        ]
    );
