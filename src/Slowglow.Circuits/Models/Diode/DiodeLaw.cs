using System.Runtime.Intrinsics;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Diode;

/// <summary>
/// Junction with series resistance and breakdown, both in explicit form by Wright's omega (Banwell and Jayakumar, Electronics Letters
/// 36, 2000, from memory): no step of Newton can overflow it. Constants in the order of <see cref="Constant"/>.
/// </summary>
internal sealed class DiodeLaw : Law
{
    /// <summary>Thermal voltage at 300 K, volts.</summary>
    public const double ThermalVolts = 0.025852;

    internal enum Constant
    {
        SaturationAmps,
        Ideality,
        SeriesOhms,
        BreakdownVolts,
        BreakdownOhms,
        BreakdownAmps,

        /// <summary>1 as made, 0 for an open junction.</summary>
        Working,
    }

    public override int Ports => 1;
    public override int Constants => 7;

    public override void Evaluate(ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> constants, Span<Lane> currents, Span<Lane> slopes)
    {
        var u = volts[0];
        var knee = constants[(int)Constant.Ideality] * ThermalVolts;
        var saturation = constants[(int)Constant.SaturationAmps];
        var forward = Exponential(u, knee, constants[(int)Constant.SeriesOhms], saturation, out var forwardSlope) - saturation;

        var reverse = Breakdown(u, constants, out var reverseSlope);
        var working = constants[(int)Constant.Working];
        currents[0] = working * (forward - reverse);
        slopes[0] = working * (forwardSlope + reverseSlope);
    }

    /// <summary>The same form mirrored, through BreakdownAmps at BreakdownVolts.</summary>
    private static Lane Breakdown(Lane u, ReadOnlySpan<Lane> constants, out Lane slope)
    {
        // So far from breaking down its share is below 1e-40.
        var over = (-u - constants[(int)Constant.BreakdownVolts]) * (1 / ThermalVolts);
        var away = Vector256.LessThan(over, Lanes.All(-100));
        if (away.ExtractMostSignificantBits() == 0xF)
        {
            slope = Lanes.Zero;
            return Lanes.Zero;
        }

        var ohms = constants[(int)Constant.BreakdownOhms];
        var atBreakdown = ohms * constants[(int)Constant.BreakdownAmps] / ThermalVolts;
        var omega = Lanes.Omega(Lanes.Log(atBreakdown) + atBreakdown + over);
        slope = Vector256.AndNot(omega / ((Lanes.One + omega) * ohms), away);
        return Vector256.AndNot(omega * ThermalVolts / ohms, away);
    }

    /// <summary>I with I = Is e^((u - I r) / knee), and its slope.</summary>
    internal static Lane Exponential(Lane u, Lane knee, Lane ohms, Lane saturation, out Lane slope)
    {
        var z = Lanes.Log(ohms * saturation / knee) + (u / knee);
        var omega = Lanes.Omega(z);
        slope = omega / ((Lanes.One + omega) * ohms);
        return omega * knee / ohms;
    }

    public override Lane Moved(ReadOnlySpan<Lane> before, ReadOnlySpan<Lane> after, ReadOnlySpan<Lane> constants) =>
        Beyond(before[0], after[0], Lanes.All(ThermalVolts));

    public override void Limit(ReadOnlySpan<Lane> before, Span<Lane> volts, ReadOnlySpan<Lane> constants)
    {
        // Each lane for itself: whether a small step is held must not hang on what the neighbours do.
        var far = Vector256.GreaterThanOrEqual(Vector256.Abs(volts[0] - before[0]), Lanes.All(ThermalVolts));
        if (far.ExtractMostSignificantBits() == 0)
        {
            return;
        }

        // From below the knee a tangent promises far too much; from above it lands at or above the knee and needs no help.
        var knee = constants[(int)Constant.Ideality] * ThermalVolts;
        var top = knee * Lanes.Log(knee / (Lanes.All(1.414) * constants[(int)Constant.SaturationAmps]));
        var jump = far & Vector256.GreaterThan(volts[0], top) & Vector256.LessThan(before[0], top);
        jump &= Vector256.GreaterThan(constants[(int)Constant.Working], Lanes.Zero);
        volts[0] = Lanes.Choose(jump, top, volts[0]);
        var bottom = -constants[(int)Constant.BreakdownVolts];
        var fall = far & Vector256.LessThan(volts[0], bottom) & Vector256.GreaterThan(before[0], bottom + Lanes.All(0.3));
        volts[0] = Lanes.Choose(fall, bottom, volts[0]);
    }
}
