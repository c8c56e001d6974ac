using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// Resistance at rest between any unknowns of worlds at their operating points: entry [row, column] is the volts at row for one ampere
/// into column. Four worlds at a time; one for each thread.
/// </summary>
public sealed class TransferResistance
{
    /// <summary>Enough instants of a cycle to see every rectifier conduct.</summary>
    private const int MostInstants = 40;
    private readonly LaneSystem system;
    private readonly Lane[] column;

    public TransferResistance(Equations equations)
    {
        system = new LaneSystem(equations);
        column = new Lane[equations.Unknowns];
    }

    /// <summary>
    /// Up to four worlds by their slots and waves ([step * unknowns + unknown]; one step for a world at rest); the result of each is row
    /// major. Slopes are averaged over the wave: a rectifier that conducts a tenth of the time holds its rail a tenth as well.
    /// </summary>
    public float[][] Of(IReadOnlyList<(double[] Slots, float[] Wave)> worlds)
    {
        var steps = worlds[0].Wave.Length / column.Length;
        var stride = Math.Max(1, steps / MostInstants);
        Load(worlds);
        system.AssembleLinear(0, system.Factors.Values);
        for (var k = 0; k < steps; k += stride)
        {
            At(worlds, k);
            system.Elements.Linearise(system.X);
            system.Elements.Evaluate(system.Slots);
            system.Elements.Stamp(system.Factors.Values, column, (double)Math.Min(stride, steps - k) / steps);
        }

        system.Factors.Factor();
        var n = column.Length;
        var results = worlds.Select(_ => new float[n * n]).ToArray();
        for (var c = 0; c < n; c++)
        {
            Array.Clear(column);
            column[c] = Lanes.One;
            system.Factors.Solve(column);
            for (var r = 0; r < n; r++)
            {
                for (var lane = 0; lane < worlds.Count; lane++)
                {
                    results[lane][(r * n) + c] = (float)Lanes.Get(in column[r], lane);
                }
            }
        }

        return results;
    }

    private void Load(IReadOnlyList<(double[] Slots, float[] Wave)> worlds)
    {
        double[] Slots(int lane) => worlds[Math.Min(lane, worlds.Count - 1)].Slots;
        for (var s = 0; s < system.Slots.Length; s++)
        {
            system.Slots[s] = Vector256.Create(Slots(0)[s], Slots(1)[s], Slots(2)[s], Slots(3)[s]);
        }
    }

    private void At(IReadOnlyList<(double[] Slots, float[] Wave)> worlds, int step)
    {
        double Value(int lane, int r) => worlds[Math.Min(lane, worlds.Count - 1)].Wave[(step * system.X.Length) + r];
        for (var r = 0; r < system.X.Length; r++)
        {
            system.X[r] = Vector256.Create(Value(0, r), Value(1, r), Value(2, r), Value(3, r));
        }
    }
}
