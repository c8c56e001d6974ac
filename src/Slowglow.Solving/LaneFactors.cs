using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>LU factors of a matrix in lanes on a fixed pattern. Diagonal pivots in a fixed order; no pivoting.</summary>
internal sealed class LaneFactors(SparsePattern pattern)
{
    /// <summary>Matrix entries before <see cref="Factor"/>, factors after it; one more at the end, where what goes to ground is put.</summary>
    public Lane[] Values { get; } = new Lane[pattern.Entries + 1];
    private readonly Lane[] inverse = new Lane[pattern.Size];

    public unsafe void Factor()
    {
        if (pattern.Code() is { } code)
        {
            fixed (
                Lane* values = Values,
                    reciprocals = inverse
            )
            {
                code.Factor.Run(values, reciprocals, null);
            }

            return;
        }

        fixed (
            Lane* v = Values,
                inv = inverse
        )
        fixed (
            int* target = pattern.Target,
                upper = pattern.UpperPosition,
                lower = pattern.LowerPosition
        )
        {
            for (var k = 0; k < pattern.Size; k++)
            {
                var reciprocal = Lanes.One / v[pattern.Pivot[k]];
                inv[k] = reciprocal;
                var u0 = pattern.UpperStart[k];
                var count = pattern.UpperStart[k + 1] - u0;
                for (var n = pattern.LowerStart[k]; n < pattern.LowerStart[k + 1]; n++)
                {
                    var l = v[lower[n]] * reciprocal;
                    v[lower[n]] = l;
                    var minus = -l;
                    var t = target + pattern.TargetStart[n];
                    for (var m = 0; m < count; m++)
                    {
                        v[t[m]] = Vector256.FusedMultiplyAdd(minus, v[upper[u0 + m]], v[t[m]]);
                    }
                }
            }
        }
    }

    /// <summary>Solves in place: right side in, solution out.</summary>
    public unsafe void Solve(Span<Lane> rightSide)
    {
        if (pattern.Written is { } code)
        {
            fixed (
                Lane* values = Values,
                    reciprocals = inverse,
                    unknowns = rightSide
            )
            {
                code.Solve.Run(values, reciprocals, unknowns);
            }

            return;
        }

        fixed (
            Lane* v = Values,
                inv = inverse,
                x = rightSide
        )
        fixed (
            int* order = pattern.Order,
                lower = pattern.LowerPosition,
                row = pattern.LowerRow
        )
        fixed (
            int* upper = pattern.UpperPosition,
                column = pattern.UpperColumn
        )
        fixed (
            int* lowerStart = pattern.LowerStart,
                upperStart = pattern.UpperStart
        )
        {
            for (var k = 0; k < pattern.Size; k++)
            {
                var minus = -x[order[k]];
                for (var n = lowerStart[k]; n < lowerStart[k + 1]; n++)
                {
                    x[row[n]] = Vector256.FusedMultiplyAdd(v[lower[n]], minus, x[row[n]]);
                }
            }

            for (var k = pattern.Size - 1; k >= 0; k--)
            {
                var sum = x[order[k]];
                for (var n = upperStart[k]; n < upperStart[k + 1]; n++)
                {
                    sum = Vector256.FusedMultiplyAdd(v[upper[n]], -x[column[n]], sum);
                }

                x[order[k]] = sum * inv[k];
            }
        }
    }

    /// <summary>Solves with the transpose, in place: a weight on every unknown in, what each row's right side then counts for out.</summary>
    public void SolveTransposed(Span<Lane> weights)
    {
        for (var k = 0; k < pattern.Size; k++)
        {
            var own = weights[pattern.Order[k]] *= inverse[k];
            for (var n = pattern.UpperStart[k]; n < pattern.UpperStart[k + 1]; n++)
            {
                weights[pattern.UpperColumn[n]] -= Values[pattern.UpperPosition[n]] * own;
            }
        }

        for (var k = pattern.Size - 1; k >= 0; k--)
        {
            var own = weights[pattern.Order[k]];
            for (var n = pattern.LowerStart[k]; n < pattern.LowerStart[k + 1]; n++)
            {
                own -= Values[pattern.LowerPosition[n]] * weights[pattern.LowerRow[n]];
            }

            weights[pattern.Order[k]] = own;
        }
    }
}
