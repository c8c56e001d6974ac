using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Layout;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Wiring;

/// <summary>Pins of one net that wires have joined so far.</summary>
internal sealed class Island
{
    private readonly List<PlacedPin> pins = [];
    private readonly List<Symbol> owners = [];
    private readonly HashSet<Cell> cells = [];

    public Island(Symbol owner, PlacedPin pin)
    {
        owners.Add(owner);
        pins.Add(pin);
        cells.Add(pin.At);
    }

    public IReadOnlySet<Cell> Cells => cells;
    public IReadOnlyList<Symbol> Owners => owners;

    /// <summary>Nothing but a tag.</summary>
    public bool IsTag => owners.All(o => o is TagSymbol);
    public bool HoldsTag => owners.Exists(o => o is TagSymbol);

    /// <summary>The pin that a tag would sit at.</summary>
    public SymbolPin FirstPin => pins[0].Pin;

    public void Take(Island other, Run way)
    {
        pins.AddRange(other.pins);
        owners.AddRange(other.owners);
        cells.UnionWith(other.cells);
        cells.UnionWith(way.Cells());
    }

    /// <summary>Where a tag might sit: at the pins, looking their way, then anywhere along the wires.</summary>
    public IEnumerable<(Cell Cell, IReadOnlyList<Heading> Headings)> Places()
    {
        foreach (var pin in pins)
        {
            yield return (pin.At, [pin.Out, .. Headings.All.Where(h => h != pin.Out && h != pin.Out.Opposite())]);
        }

        foreach (var cell in cells.OrderBy(c => c.X).ThenBy(c => c.Y))
        {
            yield return (cell, [Heading.Right, Heading.Left, Heading.Up, Heading.Down]);
        }
    }
}
