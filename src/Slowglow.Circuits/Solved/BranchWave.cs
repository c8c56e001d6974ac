using System.Numerics;
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
            _ => Flow(across, world.Slots[branch.Slot], world.Slots[branch.SteadySlot]),
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

    /// <summary>Every harmonic of the volts over r + j w L.</summary>
    private double[] Flow(double[] u, double ohms, double henries)
    {
        var n = u.Length;
        var amps = new double[n];
        for (var h = 0; h <= n / 2; h++)
        {
            Complex volts = 0;
            for (var k = 0; k < n; k++)
            {
                volts += u[k] * Complex.FromPolarCoordinates(1.0 / n, -2 * Math.PI * h * k / n);
            }

            var current = volts / new Complex(ohms, 2 * Math.PI * h * asked.Circuit.Sheet.Mains.Frequency * henries);
            var share = h == 0 || 2 * h == n ? 1 : 2;
            for (var k = 0; k < n; k++)
            {
                amps[k] += share * (current * Complex.FromPolarCoordinates(1, 2 * Math.PI * h * k / n)).Real;
            }
        }

        return amps;
    }

    public static double Mean(double[] wave) => wave.Length == 0 ? 0 : wave.Average();

    public static double Rms(double[] wave) => wave.Length == 0 ? 0 : Math.Sqrt(wave.Average(v => v * v));
}
