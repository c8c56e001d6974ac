using Slowglow.Drawing.Grid;
using Slowglow.Drawing.Layout;

namespace Slowglow.Drawing.Formations;

/// <summary>Makes one stance out of the stances of a formation's members.</summary>
internal static class Assembly
{
    private const int Sight = 200;

    /// <summary>Null when the members would touch each other, or each other's ways out.</summary>
    /// <param name="toLines">Rails by their lines where the way there is free; otherwise by tags.</param>
    public static Stance? Of(
        Formation formation,
        IReadOnlyList<Member> members,
        Func<Symbols.Symbol, IReadOnlyList<Stance>> stancesOf,
        bool toLines
    )
    {
        List<Placed> placed = [];
        foreach (var member in members)
        {
            var ways = stancesOf(member.Symbol).Where(s => s.Pose == member.Pose).ToArray();
            var stance = ways.FirstOrDefault(s => toLines && s.Pins.Any(p => p.Tie == PinTie.RailLine)) ?? ways.LastOrDefault();
            if (stance is null)
            {
                return null;
            }

            placed.Add(new Placed(stance, member.Origin));
        }

        return placed.Exists(p => placed.Exists(o => o != p && Disturbs(p, o))) ? null : new Stance(formation, placed);
    }

    private static bool Disturbs(Placed one, Placed other) =>
        one.Rooms.Any(r => other.Rooms.Any(o => r.Grown(1).Meets(o)))
        || one.Pins.Any(p =>
            other.Pins.Any(o => o.At == p.At || o.At == p.At + p.Out.Step()) || other.Rooms.Any(r => Blocks(r, p))
        );

    private static bool Blocks(Rect room, PlacedPin pin) =>
        room.Holds(pin.At)
        || room.Holds(pin.At + pin.Out.Step())
        || (pin.Tie == PinTie.RailLine && room.Meets(Rect.Around([pin.At, Far(pin)])));

    private static Cell Far(PlacedPin pin) =>
        pin.At
        + (
            pin.Out == Heading.Down ? new Cell(0, Sight)
            : pin.Out == Heading.Up ? new Cell(0, -Sight)
            : new Cell(0, 0)
        );
}
