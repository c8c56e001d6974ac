namespace Slowglow.Solving;

/// <summary>Small dense systems, one world at a time: Gauss with row exchange.</summary>
public static class DenseSolve
{
    /// <summary>
    /// Solves A X = B for several right sides in place. <paramref name="a"/> is n by n and is destroyed, <paramref name="b"/> n by columns
    /// (row major). False when A is singular to working precision.
    /// </summary>
    public static bool InPlace(double[] a, double[] b, int n, int columns)
    {
        for (var k = 0; k < n; k++)
        {
            if (!Exchange(a, b, n, columns, k))
            {
                return false;
            }

            var pivot = 1 / a[(k * n) + k];
            for (var r = k + 1; r < n; r++)
            {
                var factor = a[(r * n) + k] * pivot;
                if (factor != 0)
                {
                    Rows.Add(a.AsSpan((r * n) + k, n - k), a.AsSpan((k * n) + k, n - k), -factor);
                    Rows.Add(b.AsSpan(r * columns, columns), b.AsSpan(k * columns, columns), -factor);
                }
            }
        }

        for (var k = n - 1; k >= 0; k--)
        {
            var row = b.AsSpan(k * columns, columns);
            for (var j = k + 1; j < n; j++)
            {
                var factor = a[(k * n) + j];
                if (factor != 0)
                {
                    Rows.Add(row, b.AsSpan(j * columns, columns), -factor);
                }
            }

            var pivot = 1 / a[(k * n) + k];
            for (var c = 0; c < columns; c++)
            {
                row[c] *= pivot;
            }
        }

        return true;
    }

    private static bool Exchange(double[] a, double[] b, int n, int columns, int k)
    {
        var best = k;
        for (var r = k + 1; r < n; r++)
        {
            if (Math.Abs(a[(r * n) + k]) > Math.Abs(a[(best * n) + k]))
            {
                best = r;
            }
        }

        if (!(Math.Abs(a[(best * n) + k]) > 1e-300))
        {
            return false;
        }

        if (best != k)
        {
            Swap(a, best * n, k * n, n);
            Swap(b, best * columns, k * columns, columns);
        }

        return true;
    }

    private static void Swap(double[] m, int one, int other, int length)
    {
        for (var j = 0; j < length; j++)
        {
            (m[one + j], m[other + j]) = (m[other + j], m[one + j]);
        }
    }
}
