using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Parts.Transformer;

namespace Slowglow.Drawing.Symbols;

/// <summary>IEC 60617 06-09-02: primaries to the left, secondaries to the right, each pin in its winding's order.</summary>
internal sealed class TransformerSymbol : Symbol
{
    private const int Side = 4;
    private const int Section = 4;
    private const int Gap = 3;
    private const double Coil = 1.5;

    public TransformerSymbol(TransformerPart part)
        : base(part, part.Designator, [])
    {
        List<SymbolPin> pins = [];
        List<Stroke> strokes = [];
        var bottom = 0;
        HashSet<string> drawn = [];
        foreach (var side in new[] { -1, 1 })
        {
            var y = 0;
            foreach (var winding in part.Windings.Where(w => w.IsPrimary == side < 0))
            {
                Draw(part, winding, side, y, pins, strokes, drawn);
                y += (Section * (winding.Pins.Count - 1)) + Gap;
            }

            bottom = Math.Max(bottom, y - Gap);
        }

        strokes.AddRange([Line.Of((-0.25, 0), (-0.25, bottom)), Line.Of((0.25, 0), (0.25, bottom))]);
        Pins = pins;
        Strokes = strokes;
        Body = new(1 - Side, 0, Side - 1, bottom);
        Label = LabelSide.Above;
        IsOutput = part.IsOutput;
    }

    public bool IsOutput { get; }

    public override bool IsActive => IsOutput;

    private static void Draw(
        TransformerPart part,
        Winding winding,
        int side,
        int top,
        List<SymbolPin> pins,
        List<Stroke> strokes,
        HashSet<string> drawn
    )
    {
        for (var i = 0; i < winding.Pins.Count; i++)
        {
            var y = top + (i * Section);
            var number = winding.Pins[i];
            if (drawn.Add(number))
            {
                var heading = side < 0 ? Heading.Left : Heading.Right;
                pins.Add(new($"{part.Designator}.{number}", part.NetOf(number)!, new(side * Side, y), heading, number));
            }

            strokes.Add(Line.Of((side * Side, y), (side * Coil, y)));
            if (i > 0)
            {
                strokes.Add(Curve.Winding(side * Coil, y - Section, y, 4, -side));
            }
        }
    }
}
