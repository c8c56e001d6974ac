using Slowglow.Drawing.Grid;
using Slowglow.Quantities;
using Slowglow.Sheets.Parts.Loudspeaker;

namespace Slowglow.Drawing.Symbols;

/// <summary>IEC 60617 09-09-03.</summary>
internal sealed class LoudspeakerSymbol : TwoEnded
{
    public LoudspeakerSymbol(LoudspeakerPart part)
        : base(
            part,
            Engineering.Format(part.NominalOhms, "ohm"),
            [.. Leads(0.8), Line.Box(-0.4, -0.8, 0.4, 0.8), Line.Shape((-0.4, -0.8), (-1.3, -1.5), (-1.3, 1.5), (-0.4, 0.8))]
        ) => Body = new Rect(-2, -1, 2, 1);
}
