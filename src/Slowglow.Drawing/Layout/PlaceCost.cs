using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Symbols;

namespace Slowglow.Drawing.Layout;

/// <summary>What it costs to stand somewhere among symbols that stand already, in columns of wire.</summary>
internal sealed class PlaceCost(PlacedSymbols others)
{
    /// <summary>Of a net's pins these many, the nearest, are looked at for a wire.</summary>
    private const int Nearest = 3;

    /// <summary>What a part of another stage inside a formation costs.</summary>
    private const double Intruder = 40;

    /// <summary>Sums of the same terms in another order differ by less.</summary>
    private const double Rounding = 1e-6;

    /// <summary>The least that the place can cost: every wire straight and free.</summary>
    public double Bound(Stance stance, Cell origin) => stance.Penalty + Nearness(stance, origin) + Growth(stance, origin);

    /// <summary>What it costs, or something above <paramref name="least"/> where it costs more than that.</summary>
    public double Of(Stance stance, Cell origin, double least)
    {
        var growth = Growth(stance, origin);
        var limit = least - stance.Penalty - growth + Rounding;
        double cost = 0;
        Rect[] bodies = [.. stance.Bodies.Select(b => b.Moved(origin))];
        foreach (var end in stance.Ends)
        {
            cost += WireCost(end, origin, bodies, limit - cost);
            if (cost > limit)
            {
                return double.PositiveInfinity;
            }
        }

        foreach (var room in stance.Rooms)
        {
            cost += 2.5 * others.Sketch.Covered(room.Moved(origin), stance.Pins);
        }

        return stance.Penalty + (cost + growth + (Intruders(stance, origin) * Intruder));
    }

    /// <summary>What the drawing would grow by.</summary>
    public double Growth(Stance stance, Cell origin)
    {
        var bounds = others.Bounds;
        var grown = bounds.With(stance.Outline.Moved(origin));
        return (0.2 * (grown.Width - bounds.Width)) + (0.5 * (grown.Height - bounds.Height));
    }

    private double Nearness(Stance stance, Cell origin)
    {
        double sum = 0;
        foreach (var end in stance.Ends)
        {
            var least = int.MaxValue;
            foreach (var pin in end)
            {
                var (at, on) = (pin.At + origin, others.On(pin.Net));
                for (var i = 0; i < on.Count; i++)
                {
                    least = Math.Min(least, on[i].Pin.At.DistanceTo(at));
                }
            }

            sum += least == int.MaxValue ? 0 : least - 1;
        }

        return sum;
    }

    /// <summary>The cheapest wire from one of the pins; 0 when nothing is there to be wired to.</summary>
    private double WireCost(PlacedPin[] end, Cell origin, Rect[] bodies, double limit)
    {
        var (least, isAny) = (double.PositiveInfinity, false);
        Span<int> nearest = stackalloc int[Nearest];
        foreach (var pin in end)
        {
            var (at, on) = (pin.At + origin, others.On(pin.Net));
            foreach (var i in nearest[..FindNearest(on, at, nearest)])
            {
                var (to, arriving) = (on[i].Pin.At, on[i].Pin.Out);
                isAny = true;
                least = Math.Min(least, others.Sketch.Cost(pin.Net, at, pin.Out, to, arriving, bodies, Math.Min(least, limit)));
            }
        }

        return isAny ? least : 0;
    }

    /// <summary>Indices of the nearest, the nearest first, of two as near the one placed first.</summary>
    private static int FindNearest(IReadOnlyList<(Symbol Symbol, PlacedPin Pin)> on, Cell at, Span<int> nearest)
    {
        var count = 0;
        for (var i = 0; i < on.Count; i++)
        {
            var distance = on[i].Pin.At.DistanceTo(at);
            var rank = count;
            while (rank > 0 && on[nearest[rank - 1]].Pin.At.DistanceTo(at) > distance)
            {
                rank--;
            }

            if (rank < nearest.Length)
            {
                count = Math.Min(count + 1, nearest.Length);
                nearest[rank..(count - 1)].CopyTo(nearest[(rank + 1)..]);
                nearest[rank] = i;
            }
        }

        return count;
    }

    /// <summary>Valves, transistors and transformers that would stand in a formation they do not belong to.</summary>
    private int Intruders(Stance stance, Cell origin)
    {
        var outline = stance.Outline.Moved(origin);
        var isLarge = IsLarge(stance.Symbol);
        return isLarge || stance.Members.Count > 0
            ? others.All.Count(o =>
                (o.Stance.Members.Count > 0 ? isLarge : stance.Members.Count > 0 && IsLarge(o.Symbol)) && o.Outline.Meets(outline)
            )
            : 0;
    }

    private static bool IsLarge(Symbol symbol) => symbol.IsActive || symbol is TransformerSymbol;
}
