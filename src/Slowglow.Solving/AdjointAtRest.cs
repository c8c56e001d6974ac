using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// How the volts between two unknowns of a world at rest answer a small current into every unknown: one transposed solve with the tangents at the
/// solution. Four worlds at a time; one for each thread.
/// </summary>
public sealed class AdjointAtRest
{
    private readonly LaneSystem system;
    private readonly Lane[] weights;
    private readonly Lane[] unused;

    public AdjointAtRest(Equations equations)
    {
        system = new LaneSystem(equations);
        weights = new Lane[equations.Unknowns];
        unused = new Lane[equations.Unknowns];
    }

    /// <summary>Up to four worlds by their slots and solutions, with the two unknowns (-1 is ground); of each, ohms by unknown.</summary>
    public double[][] Of(IReadOnlyList<(double[] Slots, double[] Solution, int Red, int Black)> worlds)
    {
        for (var lane = 0; lane < Lanes.Width; lane++)
        {
            Load(worlds[Math.Min(lane, worlds.Count - 1)], lane);
        }

        system.Elements.Linearise(system.X);
        system.Elements.Evaluate(system.Slots);
        system.AssembleLinear(0, system.Factors.Values);
        system.Elements.Stamp(system.Factors.Values, unused);
        system.Factors.Factor();
        system.Factors.SolveTransposed(weights);
        return [.. worlds.Select((_, lane) => Lanes.Column(weights, lane))];
    }

    private void Load((double[] Slots, double[] Solution, int Red, int Black) world, int lane)
    {
        for (var s = 0; s < system.Slots.Length; s++)
        {
            Lanes.Put(ref system.Slots[s], lane, world.Slots[s]);
        }

        for (var r = 0; r < weights.Length; r++)
        {
            Lanes.Put(ref system.X[r], lane, world.Solution[r]);
            Lanes.Put(ref weights[r], lane, (r == world.Red ? 1 : 0) - (r == world.Black ? 1 : 0));
        }
    }
}
