using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>
/// A nonlinear law between the voltages and the currents of an element with several terminals. Port p is terminal p against the
/// reference terminal (the last); its current flows into terminal p and out of the reference. All lanes at once.
/// </summary>
public abstract class Law
{
    /// <summary>Terminals without the reference.</summary>
    public abstract int Ports { get; }

    /// <summary>Number of constants a world can set.</summary>
    public abstract int Constants { get; }

    /// <summary>Currents and their slopes: <c>slopes[p * Ports + q]</c> is d current p / d voltage q.</summary>
    public abstract void Evaluate(ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> constants, Span<Lane> currents, Span<Lane> slopes);

    /// <summary>
    /// Lanes in which the tangent at <paramref name="before"/> no longer holds at <paramref name="after"/>, as a mask. Where it is not set the currents
    /// must be foretold to within some 1e-7 of themselves. All lanes by default.
    /// </summary>
    public virtual Lane Moved(ReadOnlySpan<Lane> before, ReadOnlySpan<Lane> after, ReadOnlySpan<Lane> constants) =>
        Vector256<double>.AllBitsSet;

    /// <summary>Mask of the lanes in which a voltage moved by more than <see cref="Grain"/> of what bends its law.</summary>
    protected static Lane Beyond(Lane before, Lane after, Lane bend) =>
        Vector256.GreaterThan(Vector256.Abs(after - before), Grain * bend);

    /// <summary>Share of the volts over which a law bends within which its tangent is as good as the law: the error goes by its square.</summary>
    private const double Grain = 3e-4;

    /// <summary>Holds a proposed step to where the tangent at <paramref name="before"/> can be believed. Does nothing by default.</summary>
    public virtual void Limit(ReadOnlySpan<Lane> before, Span<Lane> volts, ReadOnlySpan<Lane> constants) { }

    /// <summary>Pole of the port's control over the others, hertz, as a constant's index; -1 when it acts at once.</summary>
    public virtual int PoleConstant(int port) => -1;
}
