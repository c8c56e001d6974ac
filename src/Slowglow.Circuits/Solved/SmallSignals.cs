using System.Numerics;
using Slowglow.Circuits.Building;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>The small signals of one world, each path and frequency worked out once.</summary>
internal sealed class SmallSignals(WorldState world, SignalFollower follower)
{
    private readonly Dictionary<(string Path, double Frequency), (Complex[]? X, SmallSignalSolver Solver)> known = [];

    /// <summary>Response of every unknown to one volt of generator, null when there is none, and the solver that stands at it.</summary>
    public (Complex[]? X, SmallSignalSolver Solver) At(Fixtures.PathFixture path, double frequency)
    {
        var key = (path.Path.Name, frequency);
        if (!known.TryGetValue(key, out var found))
        {
            var x = follower.Small(world, path, frequency, out var solver);
            known[key] = found = (x, solver);
        }

        return found;
    }
}
