using Slowglow.Quantities;
using Slowglow.Sheets.Parts.Fuse;

namespace Slowglow.Drawing.Symbols;

/// <summary>IEC 60617 07-21-01.</summary>
internal sealed class FuseSymbol(FusePart part)
    : TwoEnded(
        part,
        Engineering.Format(part.RatedAmps, "A"),
        [Line.Box(-0.45, -1.25, 0.45, 1.25), Line.Of((0, -Reach), (0, Reach))]
    );
