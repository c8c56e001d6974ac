using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Layout;

/// <summary>The symbols of a strip that stand already, what their pins are to be wired to, and where those wires are likely to run.</summary>
internal sealed class PlacedSymbols
{
    private readonly Dictionary<Symbol, Placed> placed = [];
    private readonly Dictionary<string, List<(Symbol Symbol, PlacedPin Pin)>> joined = [];

    public PlacedSymbols() => Sketch = new WireSketch(Bed);

    public Bed Bed { get; } = new();

    public WireSketch Sketch { get; }

    public Rect Bounds { get; private set; }

    public IReadOnlyCollection<Placed> All => placed.Values;

    public Placed this[Symbol symbol] => placed[symbol];

    /// <summary>True when no wire leads from the symbol to another one.</summary>
    public bool IsLoose(Symbol symbol) =>
        placed[symbol].Pins.All(p => p.Tie != PinTie.Wire || joined[p.Net].TrueForAll(j => j.Symbol == symbol));

    /// <summary>Pins to be wired to the net, in the order in which they were placed.</summary>
    public IReadOnlyList<(Symbol Symbol, PlacedPin Pin)> On(string net) => joined.TryGetValue(net, out var list) ? list : [];

    public void Put(Placed one)
    {
        placed[one.Symbol] = one;
        Bed.Add(one);
        foreach (var pin in one.Pins.Where(p => p.Tie == PinTie.Wire))
        {
            if (!joined.TryGetValue(pin.Net, out var list))
            {
                joined[pin.Net] = list = [];
            }

            list.Add((one.Symbol, pin));
        }

        Bounds = placed.Count == 1 ? one.Outline : Bounds.With(one.Outline);
    }

    public void Lift(Symbol symbol)
    {
        Bed.Remove(placed[symbol]);
        placed.Remove(symbol);
        foreach (var list in joined.Values)
        {
            list.RemoveAll(j => j.Symbol == symbol);
        }

        Bounds = placed.Count == 0 ? default : placed.Values.Select(p => p.Outline).Aggregate((a, b) => a.With(b));
    }

    /// <summary>Every pin to the nearest of those placed before it.</summary>
    public void SketchAll()
    {
        Sketch.Clear();
        foreach (var (net, pins) in joined)
        {
            for (var i = 1; i < pins.Count; i++)
            {
                var pin = pins[i].Pin;
                var nearest = pins.Take(i).Select(p => p.Pin).MinBy(p => p.At.DistanceTo(pin.At))!;
                Sketch.Draw(net, pin.At, pin.Out, nearest.At, nearest.Out);
            }
        }
    }

    public void SketchOf(Symbol symbol)
    {
        foreach (var pin in placed[symbol].Pins.Where(p => p.Tie == PinTie.Wire))
        {
            var nearest = joined[pin.Net].Where(j => j.Symbol != symbol).Select(j => j.Pin).MinBy(p => p.At.DistanceTo(pin.At));
            if (nearest is not null)
            {
                Sketch.Draw(pin.Net, pin.At, pin.Out, nearest.At, nearest.Out);
            }
        }
    }
}
