using System.Numerics;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// How a small-signal answer moves with every part, by its adjoint, the operating point that it moves included. Beside the circuit's own parameters
/// the small capacitors count here: they carry no ripple, but they shape a response.
/// </summary>
internal sealed class SmallSpread
{
    private readonly Circuit circuit;
    private readonly WorldState world;
    private readonly SlotChange[][] changes;

    public SmallSpread(AskedWorld asked)
    {
        (circuit, world) = (asked.Circuit, asked.State);
        var spoken = circuit.Changes.SelectMany(c => c).Select(c => c.Slot).ToHashSet();
        changes =
        [
            .. circuit.Changes,
            .. circuit
                .Sheet.Parts.OfType<CapacitorPart>()
                .SelectMany(c =>
                    asked
                        .Parts.BranchesOf(c.Designator)
                        .Select(b => circuit.Equations.Branches[b])
                        .Where(b => b.Kind == BranchKind.Storage && !spoken.Contains(b.Slot))
                        .Select(b => new[] { new SlotChange(b.Slot, c.Tolerance / 2) })
                ),
        ];
    }

    /// <summary>Relative change of the magnitude for one standard deviation of each.</summary>
    public double[] OfMagnitude(SignalSweep sweep, Complex[] x, Complex[] adjoint, Complex answer)
    {
        var result = new double[changes.Length];
        if (answer.Magnitude == 0)
        {
            return result;
        }

        for (var p = 0; p < result.Length; p++)
        {
            foreach (var change in changes[p])
            {
                result[p] += (circuit.Owners.Effect(sweep.Signal, change, sweep.Hertz, x, adjoint) / answer).Real;
            }
        }

        PointSpread.Add(world, sweep.Signal, x, adjoint, 1 / answer, result);
        return result;
    }

    /// <summary>Root of the sum of squares.</summary>
    public static double Sigma(IEnumerable<double> spread) => Math.Sqrt(spread.Sum(s => s * s));
}
