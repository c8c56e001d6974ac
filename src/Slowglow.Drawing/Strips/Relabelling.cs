using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Layout;
using Slowglow.Drawing.Symbols;
using Slowglow.Drawing.Wiring;

namespace Slowglow.Drawing.Strips;

/// <summary>
/// Puts other words on a strip that is laid out already, where only values changed. Everything stays where it is; null when a symbol is another
/// one, or when the new words would lie on something.
/// </summary>
internal sealed class Relabelling(IEnumerable<Symbol> symbols)
{
    private readonly ILookup<(string, Type), Symbol> symbols = symbols.ToLookup(s => (s.Name, s.GetType()));

    public Strip? Of(Strip strip)
    {
        List<Placed> placed = [];
        foreach (var old in strip.Wired.Placed)
        {
            if (Of(old) is not { } now)
            {
                return null;
            }

            placed.Add(now);
        }

        var wired = strip.Wired with { Placed = placed };
        return placed.Zip(strip.Wired.Placed).All(p => Fits(p.First, p.Second, wired)) ? strip with { Wired = wired } : null;
    }

    private Placed? Of(Placed old)
    {
        if (old.Symbol.Part is null)
        {
            return old;
        }

        Symbol[] alike = [.. symbols[(old.Symbol.Name, old.Symbol.GetType())].Where(s => IsAlike(s, old.Symbol))];
        if (alike is not [var now])
        {
            return null;
        }

        var stance = old.Stance;
        return new(new(now, stance.Pose, [.. stance.Pins.Select(p => p.Tie)], stance.Penalty), old.Origin);
    }

    private static bool IsAlike(Symbol a, Symbol b) =>
        a.Body == b.Body && a.Label == b.Label && a.Pins.SequenceEqual(b.Pins) && a.Strokes.Count == b.Strokes.Count;

    /// <summary>What the new words take beyond the old room has to be clear of other symbols, wires, rails and tags.</summary>
    private static bool Fits(Placed now, Placed old, Wired wired)
    {
        Rect[] wider = [.. now.Rooms.Where(r => !old.Rooms.Any(o => o.With(r) == o))];
        return wider.Length == 0
            || !wired
                .Placed.Where(p => p != now)
                .SelectMany(p => p.Rooms)
                .Concat(wired.Rails.Select(r => r.NameRoom))
                .Concat(wired.Tags.SelectMany(t => t.Room))
                .Concat(wired.Runs.SelectMany(r => r.Corners.Zip(r.Corners.Skip(1), (a, b) => Rect.Around([a, b]))))
                .Any(taken => wider.Any(taken.Meets));
    }
}
