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

    /// <summary>Holds a proposed step to where the tangent at <paramref name="before"/> can be believed. Does nothing by default.</summary>
    public virtual void Limit(ReadOnlySpan<Lane> before, Span<Lane> volts, ReadOnlySpan<Lane> constants) { }

    /// <summary>Pole of the port's control over the others, hertz, as a constant's index; -1 when it acts at once.</summary>
    public virtual int PoleConstant(int port) => -1;
}
