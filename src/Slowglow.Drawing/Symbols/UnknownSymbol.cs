using Slowglow.Quantities;
using Slowglow.Sheets.Parts.Unknown;

namespace Slowglow.Drawing.Symbols;

/// <summary>What the drawing does not explain: a broken box with a question mark.</summary>
internal sealed class UnknownSymbol(UnknownPart part)
    : TwoEnded(
        part,
        Engineering.Drawing(part.Ohms),
        [.. Leads(1.2), Line.Box(-0.8, -1.2, 0.8, 1.2), new Writing(0, 0.4, "?", "inside")]
    );
