using Slowglow.Quantities;
using Slowglow.Sheets.Parts.Relay;

namespace Slowglow.Drawing.Symbols;

/// <summary>A relay's coil, IEC 60617 07-15-01.</summary>
internal sealed class RelaySymbol(RelayPart part)
    : TwoEnded(
        part,
        Engineering.Format(part.RatedVolts, "V"),
        [.. Leads(0.7), Line.Box(-1.1, -0.7, 1.1, 0.7), Line.Of((-0.4, 0.7), (0.4, -0.7))]
    );
