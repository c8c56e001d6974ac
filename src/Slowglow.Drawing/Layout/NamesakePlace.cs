using Slowglow.Drawing.Grid;

namespace Slowglow.Drawing.Layout;

/// <summary>Where a symbol stands that no wire leads to: near the pins that bear the same net's name.</summary>
internal sealed class NamesakePlace(PlacedSymbols others, PlaceCost cost)
{
    private const int ReachX = 24;
    private const int ReachY = 20;

    /// <summary>Pins of one name that are looked around.</summary>
    private const int MostNamesakes = 4;

    /// <summary>Null when no pin stands for one of its tags, or there is no room about any.</summary>
    public Placed? Of(IEnumerable<Stance> stances)
    {
        var (best, least) = ((Placed?)null, double.PositiveInfinity);
        foreach (var stance in stances)
        {
            foreach (var origin in stance.Pins.Where(p => p.Tie == PinTie.Tag).SelectMany(Origins))
            {
                var covered = stance.Rooms.Sum(r => others.Sketch.Covered(r.Moved(origin), stance.Pins));
                var sum = stance.Penalty + cost.Growth(stance, origin) + (3 * covered);
                if (sum < least && others.Bed.Fits(stance, origin))
                {
                    (best, least) = (new Placed(stance, origin), sum);
                }
            }
        }

        return best;
    }

    private IEnumerable<Cell> Origins(PlacedPin pin) =>
        others
            .All.SelectMany(p => p.Pins)
            .Where(p => p.Net == pin.Net && p.Tie != PinTie.RailLine)
            .Take(MostNamesakes)
            .SelectMany(n => About(n.At - pin.At));

    private static IEnumerable<Cell> About(Cell middle)
    {
        for (var dx = -ReachX; dx <= ReachX; dx++)
        {
            for (var dy = -ReachY; dy <= ReachY; dy++)
            {
                yield return middle + new Cell(dx, dy);
            }
        }
    }
}
