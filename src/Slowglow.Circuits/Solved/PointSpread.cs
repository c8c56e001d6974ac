using System.Numerics;
using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>What parameters do to a small signal by way of the operating point: a bias that moves takes gains with it.</summary>
internal static class PointSpread
{
    /// <summary>Adds, for every parameter, the part of the answer's change that lies along <paramref name="toward"/>.</summary>
    public static void Add(
        WorldState world,
        SmallSignalSolver signal,
        Complex[] x,
        Complex[] adjoint,
        Complex toward,
        Span<double> spread
    )
    {
        var unknowns = world.Unknowns;
        if (world.MeanSpread.Length == 0)
        {
            return;
        }

        var effect = signal.PointEffect(x, adjoint);
        var along = new double[unknowns];
        for (var r = 0; r < unknowns; r++)
        {
            along[r] = (effect[r] * toward).Real;
        }

        for (var p = 0; p < world.MeanSpread.Length / unknowns; p++)
        {
            var moved = world.MeanSpread.AsSpan(p * unknowns, unknowns);
            double sum = 0;
            for (var r = 0; r < unknowns; r++)
            {
                sum += along[r] * moved[r];
            }

            spread[p] += sum;
        }
    }
}
