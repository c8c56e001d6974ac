using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// Resistance at rest between any unknowns of worlds at their operating points: entry [row, column] is the volts at row for one ampere
/// into column. Four worlds at a time; one for each thread.
/// </summary>
public sealed class TransferResistance
{
    private readonly LaneSystem system;
    private readonly Lane[] column;

    public TransferResistance(Equations equations)
    {
        system = new LaneSystem(equations);
        column = new Lane[equations.Unknowns];
    }

    /// <summary>Up to four worlds by their slots and operating points; the result of each is row major.</summary>
    public float[][] Of(IReadOnlyList<(double[] Slots, double[] Point)> worlds)
    {
        Load(worlds);
        system.AssembleLinear(0, system.Factors.Values);
        system.StampElements(system.Factors.Values, column);
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
                    results[lane][(r * n) + c] = (float)column[r].GetElement(lane);
                }
            }
        }

        return results;
    }

    private void Load(IReadOnlyList<(double[] Slots, double[] Point)> worlds)
    {
        (double[] Slots, double[] Point) At(int lane) => worlds[Math.Min(lane, worlds.Count - 1)];
        for (var s = 0; s < system.Slots.Length; s++)
        {
            system.Slots[s] = Vector256.Create(At(0).Slots[s], At(1).Slots[s], At(2).Slots[s], At(3).Slots[s]);
        }

        for (var r = 0; r < system.X.Length; r++)
        {
            system.X[r] = Vector256.Create(At(0).Point[r], At(1).Point[r], At(2).Point[r], At(3).Point[r]);
        }

        system.Linearise(system.X);
        system.Evaluate();
    }
}
