using Slowglow.Circuits.Building;

namespace Slowglow.Circuits.Solved;

/// <summary>A solved world with all that questions to it need.</summary>
internal sealed record AskedWorld(
    Circuit Circuit,
    WorldState State,
    WorldSolver Solver,
    SignalFollower Follower,
    CleanLimits Limits,
    PartSlots Parts
)
{
    /// <summary>The path of that name, of the setup's channel, or the first; null when there is none or the power is off.</summary>
    public Fixtures.PathFixture? PathOf(string? channel) =>
        State.Settled && !State.Setup.PowerOff ? Circuit.Fixtures.PathOf(channel ?? State.Setup.Channel) : null;
}
