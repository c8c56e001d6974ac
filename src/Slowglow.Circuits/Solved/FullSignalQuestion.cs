using Slowglow.Circuits.Building;
using Slowglow.Sheets.Parts.Valve;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// What the parts of a world stand at full signal. The signal is followed at 1 kHz with the rectified rails stiff; what they then deliver
/// more than at rest loads the supply over its mains cycle; on the rails that are left the clean limit is looked for once more.
/// </summary>
internal sealed class FullSignalQuestion(AskedWorld asked, Fixtures.PathFixture path)
{
    private Circuit Circuit => asked.Circuit;

    /// <summary>Null when the world passes no clean signal, or does not settle under it.</summary>
    public FullSignal? Ask(CancellationToken cancel)
    {
        var stiffly = asked.Limits.Of(asked.State, path, cancel);
        if (
            !double.IsFinite(stiffly.GeneratorVolts)
            || Follow(asked.State, 0, cancel) is not { } quiet
            || Follow(asked.State, stiffly.GeneratorVolts, cancel) is not { } stiff
            || Loaded(Delivered(quiet), Delivered(stiff), cancel) is not { } supply
        )
        {
            return null;
        }

        var limit = new CleanLimits(asked.Follower).Of(supply, path, cancel);
        if (!double.IsFinite(limit.GeneratorVolts) || Follow(supply, limit.GeneratorVolts, cancel) is not { } loud)
        {
            return null;
        }

        return new(
            path.Path.Name,
            limit,
            new World(asked with { State = supply }),
            Stress(loud, supply),
            [
                .. RectifiedNets
                    .Of(Circuit.Sheet)
                    .Zip(Delivered(loud), (net, amps) => new RailLoad(net, supply.Mean[Circuit.Rows[net]], amps)),
            ]
        );
    }

    private WorldState? Follow(WorldState world, double volts, CancellationToken cancel)
    {
        var problem = asked.Follower.Problem(world, volts, path);
        new CycleSolver(Circuit.Equations, SignalFollower.Steps, []).Solve([problem], SignalFollower.Hertz, cancel);
        return problem.Settled
            ? new WorldState
            {
                Setup = world.Setup,
                Faults = world.Faults,
                Slots = problem.Slots,
                Settled = true,
                Mean = problem.Mean,
                Wave = problem.Wave,
            }
            : null;
    }

    /// <summary>Amperes out of each held rail.</summary>
    private double[] Delivered(WorldState held) => Circuit.Fixtures.Delivered(held.Mean, held.Slots);

    /// <summary>The world with a resistor on each rail that draws what the signal draws more.</summary>
    private WorldState? Loaded(double[] rest, double[] driven, CancellationToken cancel)
    {
        var slots = (double[])asked.State.Slots.Clone();
        for (var k = 0; k < rest.Length; k++)
        {
            var hold = Circuit.Fixtures.Holds[k];
            var volts = asked.State.Mean[hold.Row];
            var siemens = Math.Abs(volts) > 0.1 ? (driven[k] - rest[k]) / volts : 0;
            (slots[hold.Siemens], slots[hold.Volts]) = (Math.Max(siemens, CircuitBuilder.OpenSiemens), 0);
        }

        var world = new WorldState
        {
            Setup = asked.State.Setup,
            Faults = asked.State.Faults,
            Slots = slots,
        };
        asked.Solver.Batch([world], asked.State, cancel);
        return world.Settled ? world : null;
    }

    private List<PartStress> Stress(WorldState loud, WorldState supply)
    {
        var (followed, mains) = (new StressView(Circuit, loud, SignalFollower.Hertz), new StressView(Circuit, supply));
        var line = new SupplyParts(Circuit.Sheet);
        var valves = Circuit.Sheet.Parts.OfType<ValvePart>().Select(v => v.Designator).ToHashSet();
        List<PartStress> all = [];
        foreach (var model in Circuit.Models)
        {
            var (driven, standing) = (model.Stress(followed), model.Stress(mains));
            if (standing is not null)
            {
                all.Add(
                    driven is null || line.Holds(standing.Part)
                        ? standing
                        : Worse(driven, standing, valves.Contains(standing.Part))
                );
            }
        }

        return all;
    }

    /// <summary>The anode volts of a valve's data are direct volts: an anode swings to twice the rail and is not the worse for it.</summary>
    private static PartStress Worse(PartStress driven, PartStress standing, bool isValve) =>
        new(
            driven.Part,
            Math.Max(driven.Watts, standing.Watts),
            Largest(driven.WattsRatio, standing.WattsRatio),
            isValve ? standing.Volts : Math.Max(driven.Volts, standing.Volts),
            isValve ? standing.VoltsRatio : Largest(driven.VoltsRatio, standing.VoltsRatio),
            Math.Max(driven.AmpsRms, standing.AmpsRms),
            Largest(driven.AmpsRatio, standing.AmpsRatio)
        );

    private static double Largest(double a, double b) =>
        double.IsNaN(a) ? b
        : double.IsNaN(b) ? a
        : Math.Max(a, b);
}
