namespace Slowglow.Circuits;

/// <summary>A unit driven to its clean limit at 1 kHz for as long as it takes its supply to follow.</summary>
/// <param name="Channel">Name of the signal path driven.</param>
/// <param name="Limit">The drive, and what comes out on the rails as the signal leaves them.</param>
/// <param name="Supply">The unit with its rectified rails loaded by what the signal draws more than rest: currents of windings and reservoirs.</param>
/// <param name="Parts">What every part stands: supply parts over the mains cycle, the others over the cycle of the signal or of the mains, whichever is worse.</param>
/// <param name="Rails">The rectified rails, and what is drawn from them.</param>
public sealed record FullSignal(
    string Channel,
    CleanLimit Limit,
    World Supply,
    IReadOnlyList<PartStress> Parts,
    IReadOnlyList<RailLoad> Rails
);
