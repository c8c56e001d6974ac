using System.Numerics;
using Slowglow.Sheets.Parts.Capacitor;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// How a small-signal answer moves with every part, by its adjoint; the operating point is held. Beside the circuit's own parameters
/// the small capacitors count here: they carry no ripple, but they shape a response.
/// </summary>
internal sealed class SmallSpread
{
    private readonly Circuit circuit;
    private readonly SlotChange[][] changes;

    public SmallSpread(AskedWorld asked)
    {
        circuit = asked.Circuit;
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

    /// <summary>Change of the answer for one standard deviation of each.</summary>
    public Complex[] Of(SignalSweep sweep, Complex[] x, Complex[] adjoint)
    {
        var result = new Complex[changes.Length];
        for (var p = 0; p < result.Length; p++)
        {
            foreach (var change in changes[p])
            {
                result[p] += circuit.Owners.Effect(sweep.Signal, change, sweep.Hertz, x, adjoint);
            }
        }

        return result;
    }

    /// <summary>Relative change of the magnitude for each.</summary>
    public double[] OfMagnitude(SignalSweep sweep, Complex[] x, Complex[] adjoint, Complex answer) =>
        answer.Magnitude == 0 ? new double[changes.Length] : [.. Of(sweep, x, adjoint).Select(c => (c / answer).Real)];

    /// <summary>Root of the sum of squares.</summary>
    public static double Sigma(IEnumerable<double> spread) => Math.Sqrt(spread.Sum(s => s * s));
}
