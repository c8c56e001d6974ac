using Slowglow.Circuits;
using Slowglow.Quantities;

namespace Slowglow.Bench.Questions;

/// <summary>Says in plain words what a technician must know before believing the figures or leaving the unit on.</summary>
public static class ConcernWords
{
    private const int MostNets = 3;

    /// <summary>One sentence each; none when all is well.</summary>
    public static IReadOnlyList<string> Say(UnitConcerns concerns) =>
        [
            .. concerns.OverRatings.Select(o => $"{o.Words}."),
            .. concerns.Stands ? [] : new[] { "The state these figures hold for is a balance that falls over by itself." },
            .. concerns.OtherStates.Select(State),
            .. concerns.ThermalLoops.SelectMany(Heat),
        ];

    private static string State(OtherState state)
    {
        var nets = state.Nets.Take(MostNets).Select(n => $"{n.Net} at {Volts(n.OtherVolts)} in place of {Volts(n.Volts)}");
        return $"The circuit can also rest with {string.Join(", ", nets)}; the figures hold for the first state only.";
    }

    private static IEnumerable<string> Heat(ThermalLoop loop)
    {
        var pair = string.Join(" and ", loop.Parts);
        var gain = Engineering.Format(Math.Max(loop.JunctionGain, loop.WholeGain), "", 2).Trim();
        if (loop.RunsAway)
        {
            yield return $"{pair} run away: their standing current rises with their own heat faster than any heatsink cools it.";
        }
        else if (loop.NeedsTracking)
        {
            yield return $"{pair} run away (thermal loop gain {gain}) unless the bias follows the heatsink.";
        }
    }

    private static string Volts(double volts) => Engineering.Format(Math.Round(volts, 3), "V", 3);
}
