using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>Arithmetic on lanes: four worlds side by side in one register.</summary>
public static class Lanes
{
    /// <summary>Worlds in one lane group.</summary>
    public const int Width = 4;

    public static readonly Lane Zero = Lane.Zero;
    public static readonly Lane One = Vector256.Create(1.0);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane All(double value) => Vector256.Create(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Choose(Lane mask, Lane then, Lane otherwise) => Vector256.ConditionalSelect(mask, then, otherwise);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Get(in Lane lanes, int lane) =>
        Unsafe.Add(ref Unsafe.As<Lane, double>(ref Unsafe.AsRef(in lanes)), lane);

    /// <summary>One lane of every vector.</summary>
    public static double[] Column(ReadOnlySpan<Lane> lanes, int lane)
    {
        var column = new double[lanes.Length];
        for (var i = 0; i < column.Length; i++)
        {
            column[i] = Get(in lanes[i], lane);
        }

        return column;
    }

    /// <summary>All bits of the lanes named (bit per lane).</summary>
    public static Lane Mask(uint lanes) =>
        Vector256
            .Create(
                (lanes & 1) != 0 ? -1L : 0,
                (lanes & 2) != 0 ? -1L : 0,
                (lanes & 4) != 0 ? -1L : 0,
                (lanes & 8) != 0 ? -1L : 0
            )
            .AsDouble();

    /// <summary>Writes one lane of a vector in memory.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Put(ref Lane lanes, int lane, double value) =>
        Unsafe.Add(ref Unsafe.As<Lane, double>(ref lanes), lane) = value;

    /// <summary>e^x with the argument held to what a double can carry.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Exp(Lane x)
    {
        var held = Vector256.Max(Vector256.Min(x, All(700)), All(-700));

        // x = n ln 2 + r: adding 1.5 * 2^52 leaves n in the last digits, which become the exponent.
        var shifted = Vector256.FusedMultiplyAdd(held, All(1.4426950408889634), All(6755399441055744.0));
        var n = shifted - All(6755399441055744.0);
        var r = Vector256.FusedMultiplyAdd(n, All(-0.6931471805599453), held);
        r = Vector256.FusedMultiplyAdd(n, All(-2.3190468138462996e-17), r);
        var r2 = r * r;
        var r4 = r2 * r2;
        var a = Vector256.FusedMultiplyAdd(r2, Series(r, 1.0 / 2, 1.0 / 6), One + r);
        var b = Vector256.FusedMultiplyAdd(r2, Series(r, 1.0 / 720, 1.0 / 5040), Series(r, 1.0 / 24, 1.0 / 120));
        var c = Vector256.FusedMultiplyAdd(r2, Series(r, 1.0 / 3628800, 1.0 / 39916800), Series(r, 1.0 / 40320, 1.0 / 362880));
        c = Vector256.FusedMultiplyAdd(r4, All(1.0 / 479001600), c);
        var e = Vector256.FusedMultiplyAdd(r4, Vector256.FusedMultiplyAdd(r4, c, b), a);
        return (e.AsInt64() + (shifted.AsInt64() << 52)).AsDouble();
    }

    /// <summary>
    /// ln x for normal x &gt; 0, error below 2e-16 of the larger of 1 and the result; minus infinity at and below zero. Exponent apart, the rest by the
    /// series of the inverse hyperbolic tangent.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Log(Lane x)
    {
        // The mantissa is taken between 0.707 and 1.414, so that the series converges alike on both sides of 1.
        var bits = x.AsInt64() - Vector256.Create(0x3FE6A09E667F3BCDL);
        var exponent = bits >> 52;
        var mantissa = (x.AsInt64() - (exponent << 52)).AsDouble();
        var f = (mantissa - One) / (mantissa + One);
        var s = f * f;
        var s2 = s * s;
        var low = Series(s, 2.0 / 3, 2.0 / 5) + (s2 * Series(s, 2.0 / 7, 2.0 / 9));
        var high =
            Series(s, 2.0 / 11, 2.0 / 13) + (s2 * Series(s, 2.0 / 15, 2.0 / 17)) + (s2 * s2 * Series(s, 2.0 / 19, 2.0 / 21));
        var rest = f * s * Vector256.FusedMultiplyAdd(s2 * s2, high, low);
        var count = WholeNumber(exponent);
        var result = Vector256.FusedMultiplyAdd(
            count,
            All(0.6931471805599453),
            (2 * f) + Vector256.FusedMultiplyAdd(count, All(2.3190468138462996e-17), rest)
        );
        return Choose(Vector256.GreaterThan(x, Zero), result, All(double.NegativeInfinity));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lane Series(Lane s, double constant, double slope) => Vector256.FusedMultiplyAdd(s, All(slope), All(constant));

    /// <summary>A small whole number as a double: written into the digits of 1.5 * 2^52, from which that is taken away again.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lane WholeNumber(Vector256<long> n) =>
        (n + All(6755399441055744.0).AsInt64()).AsDouble() - All(6755399441055744.0);

    /// <summary>x^power for x &gt; 0.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Power(Lane x, Lane power) => Exp(power * Log(x));

    /// <summary>ln(1 + e^x) without overflow, and its slope (the logistic function).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane SoftPlus(Lane x, out Lane slope)
    {
        var e = Exp(-Vector256.Abs(x));
        var inverse = One / (One + e);
        slope = Choose(Vector256.GreaterThanOrEqual(x, Zero), inverse, e * inverse);

        // ln(1 + e) loses e below 1e-16 of 1: the series keeps it.
        var log = Choose(Vector256.LessThan(e, All(1e-5)), e - (All(0.5) * e * e), Log(One + e));
        return Vector256.Max(x, Zero) + log;
    }

    /// <summary>tanh x and its slope.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane Tanh(Lane x, out Lane slope)
    {
        var e = Exp(All(-2) * Vector256.Abs(x));
        var inverse = One / (One + e);
        var t = (One - e) * inverse;
        slope = All(4) * e * inverse * inverse;
        return Choose(Vector256.LessThan(x, Zero), -t, t);
    }

    /// <summary>atan x for x &gt;= 0; error below 2e-8 (Abramowitz and Stegun, 4.4.49, constants from memory and tested).</summary>
    public static Lane ArcTan(Lane x)
    {
        var large = Vector256.GreaterThan(x, One);
        var y = Choose(large, One / Vector256.Max(x, All(1e-300)), x);
        var q = y * y;
        var p = All(0.0028662257);
        p = (p * q) + All(-0.0161657367);
        p = (p * q) + All(0.0429096138);
        p = (p * q) + All(-0.0752896400);
        p = (p * q) + All(0.1065626393);
        p = (p * q) + All(-0.1420889944);
        p = (p * q) + All(0.1999355085);
        p = (p * q) + All(-0.3333314528);
        p = ((p * q) + One) * y;
        return Choose(large, All(Math.PI / 2) - p, p);
    }

    /// <summary>
    /// Wright's omega: the w that solves w + ln w = z. Explicit form of an exponential in series with a resistance.
    /// Relative error below 1e-14 (two steps of Fritsch, Shafer and Crowley's iteration, Comm. ACM 16, 1973).
    /// </summary>
    public static Lane Omega(Lane z)
    {
        if (Vector256.LessThanAll(z, All(-36)))
        {
            return Exp(z);
        }

        var high = Vector256.Max(z, One);
        var e = Exp(Vector256.Min(z, One));
        var w = Choose(Vector256.GreaterThan(z, One), high - (Log(high) * (high / (One + high))), e * Exp(-e / (One + e)));
        w = OmegaStep(z, w);
        w = OmegaStep(z, w);
        return Choose(Vector256.LessThan(z, All(-36)), e, w);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lane OmegaStep(Lane z, Lane w)
    {
        var r = z - w - Log(w);
        var w1 = w + One;
        var q = w1 * (w1 + (All(2.0 / 3) * r));
        return w * (One + (r / w1 * ((q - (All(0.5) * r)) / (q - r))));
    }
}
