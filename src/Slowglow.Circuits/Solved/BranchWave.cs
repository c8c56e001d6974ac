using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>Current in a branch over the mains cycle, from the wave of the unknowns.</summary>
internal sealed class BranchWave(AskedWorld asked)
{
    private readonly WorldState world = asked.State;

    /// <summary>Amperes at every step, from the branch's positive weights to its negative ones.</summary>
    public double[] Amps(int branchIndex)
    {
        var branch = asked.Circuit.Equations.Branches[branchIndex];
        var across = Across(branch);
        return branch.Kind switch
        {
            BranchKind.Conductance => [.. across.Select((u, k) => world.Slots[branch.Slot] * (u - Source(branch, k)))],
            BranchKind.Storage => Storage(across, world.Slots[branch.Slot]),
            _ => FlowCurrent.Of(
                across,
                world.Slots[branch.Slot],
                world.Slots[branch.SteadySlot],
                asked.Circuit.Sheet.Mains.Frequency
            ),
        };
    }

    private double[] Across(Branch branch)
    {
        var u = new double[world.Steps];
        for (var k = 0; k < u.Length; k++)
        {
            for (var r = 0; r < branch.Rows.Length; r++)
            {
                u[k] += branch.Weights[r] * world.At(k, branch.Rows[r]);
            }
        }

        return u;
    }

    private double Source(Branch branch, int step)
    {
        var volts = branch.SteadySlot >= 0 ? world.Slots[branch.SteadySlot] : 0;
        return branch.SwingSlot < 0
            ? volts
            : volts + (world.Slots[branch.SwingSlot] * Math.Sin(2 * Math.PI * (step + 1) / world.Steps));
    }

    /// <summary>C du/dt by the rule that the cycle was stepped with, so that the currents of a net still add up.</summary>
    private double[] Storage(double[] u, double farads)
    {
        var n = u.Length;
        var rate = farads * asked.Circuit.Sheet.Mains.Frequency * n;
        double Before(int k, int back) => u[(k - back + n) % n];
        return n < 3
            ? new double[n]
            : [.. u.Select((now, k) => rate * ((1.5 * now) - (2 * Before(k, 1)) + (0.5 * Before(k, 2))))];
    }

    public static double Mean(double[] wave) => wave.Length == 0 ? 0 : wave.Average();

    public static double Rms(double[] wave) => wave.Length == 0 ? 0 : Math.Sqrt(wave.Average(v => v * v));
}
