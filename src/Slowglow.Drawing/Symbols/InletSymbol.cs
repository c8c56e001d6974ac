using Slowglow.Drawing.Grid;
using Slowglow.Sheets;

namespace Slowglow.Drawing.Symbols;

/// <summary>The mains inlet: one ring a conductor that the sheet uses.</summary>
internal sealed class InletSymbol : Symbol
{
    public InletSymbol(IReadOnlyList<string> nets, Mains mains)
        : base(null, "mains", [$"{mains.Volts:0} V {mains.Frequency:0} Hz"])
    {
        Pins = [.. nets.Select((n, i) => new SymbolPin(n, n, new(2, 4 * i), Heading.Right, n[^1..]))];
        Body = new(-1, -1, 1, (4 * nets.Count) - 3);
        Label = LabelSide.Above;
        Strokes =
        [
            .. Pins.SelectMany(p => new Stroke[] { Line.Of((0.4, p.At.Y), (2, p.At.Y)), new Ring(0, p.At.Y, 0.4, Fill.Paper) }),
        ];
    }
}
