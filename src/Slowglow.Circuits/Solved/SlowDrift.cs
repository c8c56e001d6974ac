using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// Tells whether a world that seemed settled still creeps: the little that a cycle leaves in a capacitor or a coil is a steady current, and
/// into a high resistance that current still has volts to move.
/// </summary>
internal sealed class SlowDrift(Circuit circuit)
{
    private const double Volts = 3e-4;
    private const double Part = 5e-5;

    public bool IsFar(WorldState world)
    {
        var equations = circuit.Equations;
        var n = equations.Unknowns;
        var amps = Amps(world);
        for (var r = 0; r < n; r++)
        {
            // What nothing holds has no figure that could be wrong.
            if (world.Resistance[(r * n) + r] > Answers.FloatingOhms)
            {
                continue;
            }

            double moves = 0;
            for (var c = 0; c < n; c++)
            {
                moves += world.Resistance[(r * n) + c] * amps[c];
            }

            if (!(Math.Abs(moves) <= Volts + (Part * Math.Abs(world.Mean[r]))))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Mean currents that what is left stands for.</summary>
    private double[] Amps(WorldState world)
    {
        var equations = circuit.Equations;
        var amps = new double[equations.Unknowns];
        for (var m = 0; m < world.Left.Length; m++)
        {
            var branch = equations.Branches[equations.StorageBranches[m]];
            var rate = circuit.Sheet.Mains.Frequency * world.Left[m];
            var current =
                branch.Kind == BranchKind.Storage
                    ? rate * world.Slots[branch.Slot]
                    : rate * world.Slots[branch.SteadySlot] / world.Slots[branch.Slot];
            for (var k = 0; k < branch.Rows.Length; k++)
            {
                amps[branch.Rows[k]] += branch.Weights[k] * current;
            }
        }

        return amps;
    }
}
