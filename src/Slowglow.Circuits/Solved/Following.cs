using Slowglow.Circuits.Models;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// Parts that follow the cycle slowly (heaters, relays, regulator valves) are brought in step with it by turns: solve, follow, solve
/// again those worlds that moved.
/// </summary>
internal sealed class Following(Circuit circuit)
{
    /// <summary>A relay fed through its own contact, or a heater behind another, takes a turn each; what chatters is left as it stands.</summary>
    private const int MostTurns = 5;

    private readonly PartModel[] followers = [.. circuit.Models.Where(m => m.Follows)];

    /// <summary>Follows the solved worlds until nothing moves; <paramref name="solve"/> solves some of them again from where they are.</summary>
    public void Settle(IReadOnlyList<WorldState> worlds, Action<IReadOnlyList<WorldState>> solve)
    {
        for (var turn = 0; turn < MostTurns && followers.Length > 0; turn++)
        {
            WorldState[] moved = [.. worlds.Where(w => w.Settled && Moves(w))];
            if (moved.Length == 0)
            {
                return;
            }

            solve(moved);
            worlds = moved;
        }
    }

    private bool Moves(WorldState world)
    {
        var view = new StressView(circuit, world);
        return followers.Count(f => f.Follow(view)) > 0;
    }
}
