using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Parts.Wire;

namespace Slowglow.Drawing.Symbols;

/// <summary>A link that can be lifted (IEC 60617 03-03-17): two small rings.</summary>
internal sealed class WireSymbol : TwoEnded
{
    public WireSymbol(WirePart part)
        : base(
            part,
            "",
            [Line.Of((0, -1), (0, 1)), new Ring(0, -0.45, 0.2, Fill.Paper), new Ring(0, 0.45, 0.2, Fill.Paper)],
            1
        ) => Body = new(0, 0, 0, 0);
}
