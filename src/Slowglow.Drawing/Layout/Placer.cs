using Slowglow.Drawing.Grid;
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

    /// <summary>Pins of a net that a place is looked for about.</summary>
    private const int MostTargets = 4;

    /// <summary>Places looked at closely before the best so far is taken: what comes later costs more from the outset.</summary>
    private const int MostTried = 500;

    private readonly PlacedSymbols placed = new();
    private readonly PlaceCost cost;
    private readonly NamesakePlace namesakes;
    private readonly IReadOnlyDictionary<Symbol, IReadOnlyList<Stance>> stances;
    private readonly IReadOnlyList<Symbol> order;
    private readonly CancellationToken cancel;
    private readonly int rounds;
    private readonly CellSet seen = new();

    public Placer(
        IReadOnlyDictionary<Symbol, IReadOnlyList<Stance>> stances,
        PlacingOrder ordering,
        int rounds,
        CancellationToken cancel
    )
    {
        cost = new PlaceCost(placed);
        namesakes = new NamesakePlace(placed, cost);
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
            placed.Put(Best(symbol));
            placed.SketchOf(symbol);
        }

        Symbol[] loose = [.. order.Where(placed.IsLoose)];
        for (var round = 0; round < rounds; round++)
        {
            foreach (var symbol in order.Except(loose))
            {
                cancel.ThrowIfCancellationRequested();
                placed.Lift(symbol);
                placed.SketchAll();
                placed.Put(Best(symbol));
            }

            // What hangs on nothing here stands near the pins that it is named after, or else in a row at the end.
            loose.ToList().ForEach(placed.Lift);
            placed.SketchAll();
            foreach (var symbol in loose)
            {
                placed.Put(namesakes.Of(stances[symbol]) ?? Outside(symbol));
            }

            yield return [.. order.Select(s => placed[s]).SelectMany(Parted)];
        }
    }

    /// <summary>A formation's members at their own places.</summary>
    private static IEnumerable<Placed> Parted(Placed one) =>
        one.Stance.Members.Count == 0 ? [one] : one.Stance.Members.Select(m => m.Moved(one.Origin));

    private Placed Best(Symbol symbol)
    {
        if (placed.All.Count == 0)
        {
            return new Placed(stances[symbol].MinBy(s => s.Penalty)!, new(0, 0));
        }

        var (best, least) = ((Placed?)null, double.PositiveInfinity);
        var tried = 0;
        var (bounds, places) = Candidates(symbol);
        for (var i = 0; i < places.Length && bounds[i] < least && tried < MostTried; i++)
        {
            var (stance, origin) = places[i];
            if (!placed.Bed.Fits(stance, origin))
            {
                continue;
            }

            tried++;
            if (cost.Of(stance, origin, least) is var here && here < least)
            {
                (best, least) = (new Placed(stance, origin), here);
            }
        }

        return best ?? Outside(symbol);
    }

    /// <summary>Stances and places, the least that each can cost first.</summary>
    private (double[] Bounds, (Stance Stance, Cell Origin)[] Places) Candidates(Symbol symbol)
    {
        List<(Stance Stance, Cell Origin)> found = [];
        foreach (var stance in stances[symbol])
        {
            AddOrigins(stance, found);
        }

        (Stance Stance, Cell Origin)[] places = [.. found];
        var bounds = Array.ConvertAll(places, p => cost.Bound(p.Stance, p.Origin));
        Array.Sort(bounds, places);
        return (bounds, places);
    }

    /// <summary>Origins that bring one of the stance's pins near a pin of its net, each once.</summary>
    private void AddOrigins(Stance stance, List<(Stance Stance, Cell Origin)> found)
    {
        seen.Clear();
        foreach (var pin in stance.Pins.Where(p => p.Tie == PinTie.Wire))
        {
            foreach (var (_, target) in placed.On(pin.Net).Take(MostTargets))
            {
                var middle = target.At - pin.At;
                for (var dx = -ReachX; dx <= ReachX; dx++)
                {
                    for (var dy = -ReachY; dy <= ReachY; dy++)
                    {
                        var origin = middle + new Cell(dx, dy);
                        if (seen.Add(origin))
                        {
                            found.Add((stance, origin));
                        }
                    }
                }
            }
        }
    }

    /// <summary>Nothing of its nets is placed yet, or there is no room near it: to the right of everything.</summary>
    private Placed Outside(Symbol symbol)
    {
        var lines = stances[symbol].OrderBy(s => s.Penalty).ToArray();
        if (placed.All.Count == 0)
        {
            return new Placed(lines[0], new(0, 0));
        }

        for (var x = placed.Bounds.Right + 3; ; x++)
        {
            foreach (var stance in lines)
            {
                var origin = new Cell(x - stance.Outline.Left, 0);
                if (placed.Bed.Fits(stance, origin))
                {
                    return new Placed(stance, origin);
                }
            }
        }
    }
}
