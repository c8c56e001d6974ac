using Slowglow.Solving;

namespace Slowglow.Circuits.Solved;

/// <summary>
/// Whether a state of rest stands or falls over. With a little capacitance at every net, as any real circuit has, the determinant of the
/// matrix is positive far out; one that is negative at rest must cross zero between, and what grows there tips the circuit over. Its sign is
/// found from the amplifying sources alone: det(I - Z) is the determinant of the passive rest over that of the whole.
/// </summary>
internal static class Balance
{
    /// <summary>Frequency that is rest for every capacitor, hertz.</summary>
    public const double Rest = 1e-3;

    public static bool Stands(Equations equations, double[] slots, double[] state)
    {
        ControlledSource[] sources = [.. ControlledSource.In(equations, slots, state)];
        var signal = new SmallSignalSolver(equations);
        signal.Prepare(slots, state, Rest);
        var n = sources.Length;
        var matrix = new double[n, n];
        for (var i = 0; i < n; i++)
        {
            var control = sources[i].Control(signal);
            for (var j = 0; j < n; j++)
            {
                matrix[i, j] = (i == j ? 1 : 0) - sources[j].Effect(control, Rest).Real;
            }
        }

        return IsPositive(matrix, n);
    }

    /// <summary>Sign of the determinant, by elimination with row exchange.</summary>
    private static bool IsPositive(double[,] matrix, int n)
    {
        var positive = true;
        for (var k = 0; k < n; k++)
        {
            var pivot = Enumerable.Range(k, n - k).MaxBy(r => Math.Abs(matrix[r, k]));
            if (pivot != k)
            {
                positive = !positive;
                for (var c = 0; c < n; c++)
                {
                    (matrix[k, c], matrix[pivot, c]) = (matrix[pivot, c], matrix[k, c]);
                }
            }

            positive ^= matrix[k, k] < 0;
            for (var r = k + 1; r < n && matrix[k, k] != 0; r++)
            {
                var factor = matrix[r, k] / matrix[k, k];
                for (var c = k; c < n; c++)
                {
                    matrix[r, c] -= factor * matrix[k, c];
                }
            }
        }

        return positive;
    }
}
