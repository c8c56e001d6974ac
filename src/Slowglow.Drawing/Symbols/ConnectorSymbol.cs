using Slowglow.Drawing.Grid;
using Slowglow.Sheets.Parts.Connector;

namespace Slowglow.Drawing.Symbols;

/// <summary>A jack or socket (IEC 60617 03-03-01): one ring a lead, the unit to its right.</summary>
internal sealed class ConnectorSymbol : Symbol
{
    public ConnectorSymbol(ConnectorPart part)
        : base(part, part.Designator, [part.Description])
    {
        Pins =
        [
            .. part.Pins.Select((p, i) => new SymbolPin($"{part.Designator}.{p.Number}", p.Net, new(2, 2 * i), Heading.Right)),
        ];
        Body = new(-1, -1, 1, Math.Max(1, (2 * part.Pins.Count) - 1));
        Turning = Turning.Mirror;
        Label = LabelSide.Above;
        Strokes =
        [
            .. part.Pins.SelectMany(
                (_, i) => new Stroke[] { Line.Of((0.4, 2 * i), (2, 2 * i)), new Ring(0, 2 * i, 0.4, Fill.Paper) }
            ),
        ];
    }
}
