using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// How every unknown of a world at rest answers every one of a set of slots, and with independent spreads of these the variance of
/// every unknown. The tangent matrix is factored once; its transpose is solved for all unknowns together, which stand side by side in the
/// lanes, so that each factor is read once. One for each thread; results are overwritten by the next call.
/// </summary>
public sealed class RestSensitivity
{
    private readonly Equations equations;
    private readonly LaneSystem system;
    private readonly SparsePattern pattern;

    /// <summary>What the branches put into the matrix at rest, one number at a time: all lanes hold the same world.</summary>
    private readonly (int Position, int Slot, double Weight, bool IsOhms)[] stamps;
    private readonly Lane[] elements;
    private readonly Lane[] unused;
    private readonly double[] factors;
    private readonly double[] inverse;
    private readonly (Branch Branch, double Relative)[] moved;
    private readonly int stride;

    /// <summary>Row a, column i: volts at the i-th eliminated unknown for an ampere into unknown a.</summary>
    private readonly Lane[] answers;
    private readonly Lane[] sensitivities;
    private readonly Lane[] variances;
    private readonly int[] columnOf;

    /// <param name="changes">Slots of conductance branches and by what fraction each moves (one standard deviation).</param>
    public RestSensitivity(Equations equations, IReadOnlyList<SlotChange> changes)
    {
        this.equations = equations;
        system = new LaneSystem(equations);
        pattern = equations.Pattern;

        // One more, where what is at ground goes.
        elements = new Lane[pattern.Entries + 1];
        stamps = [.. equations.Branches.Where(b => b.Kind != BranchKind.Storage).SelectMany(StampsOf)];
        unused = new Lane[equations.Unknowns];
        factors = new double[pattern.Entries];
        inverse = new double[pattern.Size];
        stride = (pattern.Size + Lanes.Width - 1) / Lanes.Width;
        answers = new Lane[pattern.Size * stride];
        sensitivities = new Lane[changes.Count * stride];
        variances = new Lane[stride];
        columnOf = new int[pattern.Size];
        for (var k = 0; k < pattern.Size; k++)
        {
            columnOf[pattern.Order[k]] = k;
        }

        moved = [.. changes.Select(c => (BranchAt(c.Slot), c.Relative))];
    }

    private IEnumerable<(int Position, int Slot, double Weight, bool IsOhms)> StampsOf(Branch branch)
    {
        var n = branch.Rows.Length;
        var positions = pattern.PositionsOf(branch.Rows);
        return from a in Enumerable.Range(0, n)
            from b in Enumerable.Range(0, n)
            select (positions[(a * n) + b], branch.Slot, branch.Weights[a] * branch.Weights[b], branch.Kind == BranchKind.Flow);
    }

    private Branch BranchAt(int slot) =>
        equations.Branches.FirstOrDefault(b => b.Kind == BranchKind.Conductance && b.Slot == slot)
        ?? throw new ArgumentOutOfRangeException(nameof(slot), slot, "no conductance keeps its siemens there");

    /// <summary>Change of an unknown, volts, for one standard deviation of a change given at the start.</summary>
    public double Of(int change, int unknown) => Numbers(sensitivities)[(change * stride * Lanes.Width) + columnOf[unknown]];

    /// <summary>Variance of an unknown, square volts, all changes independent.</summary>
    public double Variance(int unknown) => Numbers(variances)[columnOf[unknown]];

    private static ReadOnlySpan<double> Numbers(Lane[] lanes) => MemoryMarshal.Cast<Lane, double>(lanes);

    /// <summary>Takes a world by its slots and resting state and works out everything.</summary>
    /// <param name="swing">Where sine sources are frozen, -1 to 1.</param>
    public void Solve(ReadOnlySpan<double> slots, ReadOnlySpan<double> solution, double swing = 0)
    {
        Tangents(slots, solution);
        Factor();
        Answer();
        Combine(swing);
    }

    private void Tangents(ReadOnlySpan<double> slots, ReadOnlySpan<double> solution)
    {
        for (var s = 0; s < slots.Length; s++)
        {
            system.Slots[s] = Lanes.All(slots[s]);
        }

        for (var r = 0; r < solution.Length; r++)
        {
            system.X[r] = Lanes.All(solution[r]);
        }

        system.Elements.Linearise(system.X);
        system.Elements.Evaluate(system.Slots);
        Array.Clear(elements);
        system.Elements.Stamp(elements, unused);
        for (var p = 0; p < factors.Length; p++)
        {
            factors[p] = elements[p].ToScalar();
        }

        foreach (var (position, slot, weight, isOhms) in stamps)
        {
            factors[position] += isOhms ? weight / slots[slot] : weight * slots[slot];
        }

        foreach (var diagonal in pattern.Diagonal)
        {
            factors[diagonal] += LaneSystem.Leak;
        }
    }

    private void Factor()
    {
        for (var k = 0; k < pattern.Size; k++)
        {
            var reciprocal = inverse[k] = 1 / factors[pattern.Pivot[k]];
            var upper = pattern.UpperPosition.AsSpan(pattern.UpperStart[k], pattern.UpperStart[k + 1] - pattern.UpperStart[k]);
            for (var n = pattern.LowerStart[k]; n < pattern.LowerStart[k + 1]; n++)
            {
                var l = factors[pattern.LowerPosition[n]] *= reciprocal;
                var target = pattern.Target.AsSpan(pattern.TargetStart[n], upper.Length);
                for (var m = 0; m < upper.Length; m++)
                {
                    factors[target[m]] -= l * factors[upper[m]];
                }
            }
        }
    }

    /// <summary>
    /// The transposed system with the unit matrix on its right side, columns in the order of elimination: until its own turn comes a column
    /// is zero, so that the way down takes only those that have begun.
    /// </summary>
    private void Answer()
    {
        Array.Clear(answers);
        var all = MemoryMarshal.Cast<Lane, double>(answers.AsSpan());
        for (var k = 0; k < pattern.Size; k++)
        {
            all[(pattern.Order[k] * stride * Lanes.Width) + k] = 1;
        }

        for (var k = 0; k < pattern.Size; k++)
        {
            var begun = (k / Lanes.Width) + 1;
            var own = answers.AsSpan(pattern.Order[k] * stride, begun);
            Scale(own, inverse[k]);
            for (var n = pattern.UpperStart[k]; n < pattern.UpperStart[k + 1]; n++)
            {
                var row = answers.AsSpan(pattern.UpperColumn[n] * stride, begun);
                Subtract(row, factors[pattern.UpperPosition[n]], own);
            }
        }

        for (var k = pattern.Size - 1; k >= 0; k--)
        {
            var own = answers.AsSpan(pattern.Order[k] * stride, stride);
            for (var n = pattern.LowerStart[k]; n < pattern.LowerStart[k + 1]; n++)
            {
                Subtract(own, factors[pattern.LowerPosition[n]], answers.AsSpan(pattern.LowerRow[n] * stride, stride));
            }
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Scale(Span<Lane> row, double factor)
    {
        var all = Lanes.All(factor);
        for (var i = 0; i < row.Length; i++)
        {
            row[i] *= all;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Subtract(Span<Lane> row, double factor, ReadOnlySpan<Lane> other)
    {
        var minus = Lanes.All(-factor);
        ref var to = ref MemoryMarshal.GetReference(row);
        ref var from = ref MemoryMarshal.GetReference(other);
        for (var i = 0; i < row.Length; i++)
        {
            Unsafe.Add(ref to, i) = Vector256.FusedMultiplyAdd(minus, Unsafe.Add(ref from, i), Unsafe.Add(ref to, i));
        }
    }

    /// <summary>A conductance that moves by dg pushes -dg (u - e) into its rows, and every unknown answers that.</summary>
    private void Combine(double swing)
    {
        Array.Clear(variances);
        for (var m = 0; m < moved.Length; m++)
        {
            var (branch, relative) = moved[m];
            var across = LaneSystem.Across(branch, system.X) - system.SourceOf(branch, swing);
            var pushed = -relative * system.Slots[branch.Slot] * across;
            var result = sensitivities.AsSpan(m * stride, stride);
            if (branch.Rows.Length == 2)
            {
                var one = answers.AsSpan(branch.Rows[0] * stride, stride);
                var other = answers.AsSpan(branch.Rows[1] * stride, stride);
                var (first, second) = (branch.Weights[0] * pushed, branch.Weights[1] * pushed);
                for (var i = 0; i < result.Length; i++)
                {
                    result[i] = Vector256.FusedMultiplyAdd(first, one[i], second * other[i]);
                }
            }
            else
            {
                Sum(branch, pushed, result);
            }

            for (var i = 0; i < result.Length; i++)
            {
                variances[i] = Vector256.FusedMultiplyAdd(result[i], result[i], variances[i]);
            }
        }
    }

    private void Sum(Branch branch, in Lane pushed, Span<Lane> result)
    {
        result.Clear();
        for (var r = 0; r < branch.Rows.Length; r++)
        {
            var row = answers.AsSpan(branch.Rows[r] * stride, stride);
            for (var i = 0; i < result.Length; i++)
            {
                result[i] = Vector256.FusedMultiplyAdd(branch.Weights[r] * pushed, row[i], result[i]);
            }
        }
    }
}
