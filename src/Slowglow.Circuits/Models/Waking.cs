using System.Runtime.Intrinsics;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models;

/// <summary>
/// How far a chip works by the volts across its supply pins: 0 where its junctions have not begun to turn on, 1 where it works as made. Below a volt it takes
/// next to nothing, so that an ohmmeter across a dead supply is not held down by what hangs on it. The shape, tanh of the cube, is judgement.
/// </summary>
internal static class Waking
{
    /// <summary>0 to 1, with its slope per volt; <paramref name="volts"/> are those at which three quarters are there.</summary>
    public static Lane At(Lane supply, double volts, out Lane slope)
    {
        var share = Vector256.Max(supply, Lanes.Zero) * (1 / volts);
        var square = share * share;
        var awake = Lanes.Tanh(square * share, out var bySize);
        slope = bySize * square * (3 / volts);
        return awake;
    }
}
