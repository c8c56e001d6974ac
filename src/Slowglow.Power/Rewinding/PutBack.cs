using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Power.Rewinding;

/// <summary>A design as a part of the sheet: volts by turns, copper as it is when warm.</summary>
internal static class PutBack
{
    public static TransformerPart Of(TransformerPart drawn, WoundDesign design, TappedPrimary? primary, double mains)
    {
        var first = design.Windings.First(w => w.Need.IsPrimary);
        var perTurn = first.Need.Volts / first.Turns;
        return drawn with
        {
            Rating = design.VoltAmperes,
            Windings =
            [
                .. drawn.Windings.Select(w =>
                    w.IsPrimary ? Primary(w, design, primary, mains) : Secondary(w, design.Of(w.Name), perTurn)
                ),
            ],
        };
    }

    private static Winding Secondary(Winding w, WoundWinding wound, double perTurn) =>
        w with
        {
            SectionVolts = [.. wound.SectionTurns.Select(t => t * perTurn)],
            SectionOhms = [.. wound.SectionTurns.Select(t => wound.HotOhms * t / wound.Turns)],
        };

    private static Winding Primary(Winding w, WoundDesign design, TappedPrimary? taps, double mains)
    {
        if (taps is null)
        {
            var wound = design.Of(w.Name);
            return w with { SectionOhms = [.. wound.SectionTurns.Select(t => wound.HotOhms * t / wound.Turns)] };
        }

        // The nearest strap, seen as one winding; the drawing's primaries share it.
        var strap = taps.Straps.MinBy(s => Math.Abs(s.Volts - mains))!;
        var half = design.Windings.First(d => d.Need.IsPrimary);
        double Ohms(double tap) => half.HotOhms * tap / taps.Taps[^1];
        var whole = strap.InSeries ? Ohms(strap.FirstTap) + Ohms(strap.SecondTap) : Ohms(strap.FirstTap) / 2;
        var share = w.SectionVolts.Sum() / mains;
        return w with { SectionOhms = [.. w.SectionVolts.Select(v => Math.Max(whole * share * v / w.SectionVolts.Sum(), 1e-3))] };
    }
}
