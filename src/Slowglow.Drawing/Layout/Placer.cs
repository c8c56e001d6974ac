using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Stages;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Layout;

/// <summary>
/// Places the symbols of one strip, one after the other along the signal's way, each where its wires come out shortest, straightest and
/// with fewest crossings, in the pose that drawings prefer. Then lifts each once more and lets it find a better place, a few times over.
/// </summary>
internal sealed class Placer
{
    private const int ReachX = 12;
    private const int ReachY = 10;

    /// <summary>Places looked at closely before the best so far is taken: what comes later costs more from the outset.</summary>
    private const int MostTried = 500;

    /// <summary>What a part of another stage inside a formation costs, in columns of wire.</summary>
    private const double Intruder = 40;

    private readonly Bed bed = new();
    private readonly WireSketch sketch;
    private readonly Dictionary<Symbol, Placed> placed = [];
    private readonly Dictionary<string, List<(Symbol Symbol, PlacedPin Pin)>> joined = [];
    private readonly IReadOnlyDictionary<Symbol, IReadOnlyList<Stance>> stances;
    private readonly IReadOnlyList<Symbol> order;
    private readonly CancellationToken cancel;
    private readonly int rounds;
    private Rect bounds;

    public Placer(
        IReadOnlyDictionary<Symbol, IReadOnlyList<Stance>> stances,
        PlacingOrder ordering,
        int rounds,
        CancellationToken cancel
    )
    {
        sketch = new WireSketch(bed);
        this.cancel = cancel;
        this.rounds = rounds;
        this.stances = stances;
        order = ordering.Of([.. stances.Keys]);
    }

    /// <summary>The strip as it is placed first, then after each round of finding better places.</summary>
    public IEnumerable<IReadOnlyList<Placed>> Places()
    {
        foreach (var symbol in order)
        {
            cancel.ThrowIfCancellationRequested();
            Put(Best(symbol));
            Sketch(symbol);
        }

        Symbol[] loose = [.. order.Where(IsLoose)];
        for (var round = 0; round < rounds; round++)
        {
            foreach (var symbol in order.Except(loose))
            {
                cancel.ThrowIfCancellationRequested();
                Improve(symbol);
            }

            // What hangs on nothing here stands near the pins that it is named after, or else in a row at the end.
            loose.ToList().ForEach(Lift);
            SketchAll();
            foreach (var symbol in loose)
            {
                Put(NearNamesakes(symbol) ?? Outside(symbol));
            }

            yield return [.. order.Select(s => placed[s]).SelectMany(Parted)];
        }
    }

    /// <summary>A formation's members at their own places.</summary>
    private static IEnumerable<Placed> Parted(Placed one) =>
        one.Stance.Members.Count == 0 ? [one] : one.Stance.Members.Select(m => m.Moved(one.Origin));

    private bool IsLoose(Symbol symbol) =>
        placed[symbol].Pins.All(p => p.Tie != PinTie.Wire || joined[p.Net].TrueForAll(j => j.Symbol == symbol));

    private void Improve(Symbol symbol)
    {
        Lift(symbol);
        SketchAll();
        Put(Best(symbol));
    }

    private void Put(Placed one)
    {
        placed[one.Symbol] = one;
        bed.Add(one);
        foreach (var pin in one.Pins.Where(p => p.Tie == PinTie.Wire))
        {
            if (!joined.TryGetValue(pin.Net, out var list))
            {
                joined[pin.Net] = list = [];
            }

            list.Add((one.Symbol, pin));
        }

        bounds = placed.Count == 1 ? one.Outline : bounds.With(one.Outline);
    }

    private void Lift(Symbol symbol)
    {
        bed.Remove(placed[symbol]);
        placed.Remove(symbol);
        foreach (var list in joined.Values)
        {
            list.RemoveAll(j => j.Symbol == symbol);
        }

        bounds = placed.Count == 0 ? default : placed.Values.Select(p => p.Outline).Aggregate((a, b) => a.With(b));
    }

    private void SketchAll()
    {
        sketch.Clear();
        foreach (var (net, pins) in joined)
        {
            for (var i = 1; i < pins.Count; i++)
            {
                var pin = pins[i].Pin;
                var nearest = pins.Take(i).Select(p => p.Pin).MinBy(p => p.At.DistanceTo(pin.At))!;
                sketch.Draw(net, pin.At, pin.Out, nearest.At, nearest.Out);
            }
        }
    }

    private void Sketch(Symbol symbol)
    {
        foreach (var pin in placed[symbol].Pins.Where(p => p.Tie == PinTie.Wire))
        {
            var nearest = joined[pin.Net].Where(j => j.Symbol != symbol).Select(j => j.Pin).MinBy(p => p.At.DistanceTo(pin.At));
            if (nearest is not null)
            {
                sketch.Draw(pin.Net, pin.At, pin.Out, nearest.At, nearest.Out);
            }
        }
    }

    private Placed Best(Symbol symbol)
    {
        if (placed.Count == 0)
        {
            return new Placed(stances[symbol].MinBy(s => s.Penalty)!, new(0, 0));
        }

        var (best, least) = ((Placed?)null, double.PositiveInfinity);
        var tried = 0;
        foreach (var (bound, stance, origin) in Candidates(symbol))
        {
            if (bound >= least || tried >= MostTried)
            {
                break;
            }

            if (!bed.Fits(stance, origin))
            {
                continue;
            }

            tried++;
            if (stance.Penalty + Cost(stance, origin) is var cost && cost < least)
            {
                (best, least) = (new Placed(stance, origin), cost);
            }
        }

        return best ?? Outside(symbol);
    }

    /// <summary>Stances and places, the least that each can cost first.</summary>
    private List<(double Bound, Stance Stance, Cell Origin)> Candidates(Symbol symbol)
    {
        List<(double Bound, Stance Stance, Cell Origin)> found = [];
        foreach (var stance in stances[symbol])
        {
            foreach (var origin in Origins(stance))
            {
                found.Add((stance.Penalty + Nearness(stance, origin) + Growth(stance, origin), stance, origin));
            }
        }

        found.Sort((a, b) => a.Bound.CompareTo(b.Bound));
        return found;
    }

    /// <summary>Origins that bring one of the stance's pins near a pin of its net.</summary>
    private IEnumerable<Cell> Origins(Stance stance)
    {
        HashSet<Cell> seen = [];
        foreach (var pin in stance.Pins.Where(p => p.Tie == PinTie.Wire))
        {
            foreach (var target in Targets(pin).Take(4))
            {
                var middle = target.At - pin.At;
                for (var dx = -ReachX; dx <= ReachX; dx++)
                {
                    for (var dy = -ReachY; dy <= ReachY; dy++)
                    {
                        var origin = middle + new Cell(dx, dy);
                        if (seen.Add(origin))
                        {
                            yield return origin;
                        }
                    }
                }
            }
        }
    }

    private IEnumerable<PlacedPin> Targets(PlacedPin pin) =>
        joined.TryGetValue(pin.Net, out var list) ? list.Select(j => j.Pin) : [];

    private double Nearness(Stance stance, Cell origin)
    {
        double sum = 0;
        foreach (var end in stance.Ends)
        {
            var least = int.MaxValue;
            foreach (var pin in end)
            {
                if (joined.TryGetValue(pin.Net, out var list))
                {
                    var at = pin.At + origin;
                    foreach (var (_, other) in list)
                    {
                        least = Math.Min(least, other.At.DistanceTo(at));
                    }
                }
            }

            sum += least == int.MaxValue ? 0 : least - 1;
        }

        return sum;
    }

    private double Cost(Stance stance, Cell origin)
    {
        double cost = 0;
        Rect[] bodies = [.. stance.Bodies.Select(b => b.Moved(origin))];
        foreach (var end in stance.Ends)
        {
            var least = double.PositiveInfinity;
            foreach (var pin in end)
            {
                foreach (var target in Targets(pin).OrderBy(t => t.At.DistanceTo(pin.At + origin)).Take(3))
                {
                    least = Math.Min(least, sketch.Cost(pin.Net, pin.At + origin, pin.Out, target.At, target.Out, bodies));
                }
            }

            cost += double.IsPositiveInfinity(least) ? 0 : least;
        }

        foreach (var room in stance.Rooms)
        {
            cost += 2.5 * sketch.Covered(room.Moved(origin), stance.Pins);
        }

        return cost + Growth(stance, origin) + (Intruders(stance, origin) * Intruder);
    }

    /// <summary>Valves, transistors and transformers that would stand in a formation they do not belong to.</summary>
    private int Intruders(Stance stance, Cell origin)
    {
        var outline = stance.Outline.Moved(origin);
        var isLarge = IsLarge(stance.Symbol);
        return isLarge || stance.Members.Count > 0
            ? placed.Values.Count(o =>
                (o.Stance.Members.Count > 0 ? isLarge : stance.Members.Count > 0 && IsLarge(o.Symbol)) && o.Outline.Meets(outline)
            )
            : 0;
    }

    private static bool IsLarge(Symbol symbol) => symbol.IsActive || symbol is TransformerSymbol;

    private double Growth(Stance stance, Cell origin)
    {
        var grown = bounds.With(stance.Outline.Moved(origin));
        return (0.2 * (grown.Width - bounds.Width)) + (0.5 * (grown.Height - bounds.Height));
    }

    /// <summary>Null when no pin stands for one of its tags, or there is no room about any.</summary>
    private Placed? NearNamesakes(Symbol symbol)
    {
        var (best, least) = ((Placed?)null, double.PositiveInfinity);
        foreach (var stance in stances[symbol])
        {
            foreach (var pin in stance.Pins.Where(p => p.Tie == PinTie.Tag))
            {
                var namesakes = placed.Values.SelectMany(p => p.Pins).Where(p => p.Net == pin.Net && p.Tie != PinTie.RailLine);
                foreach (var origin in namesakes.Take(4).SelectMany(n => About(n.At - pin.At)))
                {
                    var covered = stance.Rooms.Sum(r => sketch.Covered(r.Moved(origin), stance.Pins));
                    var cost = stance.Penalty + Growth(stance, origin) + (3 * covered);
                    if (cost < least && bed.Fits(stance, origin))
                    {
                        (best, least) = (new Placed(stance, origin), cost);
                    }
                }
            }
        }

        return best;
    }

    private static IEnumerable<Cell> About(Cell middle)
    {
        for (var dx = -2 * ReachX; dx <= 2 * ReachX; dx++)
        {
            for (var dy = -2 * ReachY; dy <= 2 * ReachY; dy++)
            {
                yield return middle + new Cell(dx, dy);
            }
        }
    }

    /// <summary>Nothing of its nets is placed yet, or there is no room near it: to the right of everything.</summary>
    private Placed Outside(Symbol symbol)
    {
        var lines = stances[symbol].OrderBy(s => s.Penalty).ToArray();
        if (placed.Count == 0)
        {
            return new Placed(lines[0], new(0, 0));
        }

        for (var x = bounds.Right + 3; ; x++)
        {
            foreach (var stance in lines)
            {
                var origin = new Cell(x - stance.Outline.Left, 0);
                if (bed.Fits(stance, origin))
                {
                    return new Placed(stance, origin);
                }
            }
        }
    }
}
