using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>Sums of rows of numbers.</summary>
internal static class Rows
{
    /// <summary>target += factor * source.</summary>
    public static void Add(Span<double> target, ReadOnlySpan<double> source, double factor)
    {
        var k = 0;
        ref var t = ref Unsafe.AsRef(in target.GetPinnableReference());
        ref var s = ref Unsafe.AsRef(in source.GetPinnableReference());
        var share = Vector256.Create(factor);
        for (; k <= source.Length - Lanes.Width; k += Lanes.Width)
        {
            var sum = Vector256.FusedMultiplyAdd(
                share,
                Vector256.LoadUnsafe(ref s, (nuint)k),
                Vector256.LoadUnsafe(ref t, (nuint)k)
            );
            sum.StoreUnsafe(ref t, (nuint)k);
        }

        for (; k < source.Length; k++)
        {
            target[k] += factor * source[k];
        }
    }
}
