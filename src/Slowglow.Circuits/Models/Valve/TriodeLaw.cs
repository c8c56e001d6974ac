using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Valve;

/// <summary>
/// Triode by Koren (Glass Audio 8(5), 1996) with grid current by Dempwolf and Zoelzer (DAFx-11, 2011). Ports: anode, grid; reference
/// cathode.
/// </summary>
internal class TriodeLaw : Law
{
    internal enum Constant
    {
        Mu,
        Ex,
        Kg1,
        Kp,
        Kvb,
        ContactVolts,
        GridAmps,
        GridSharpness,
        GridExponent,

        /// <summary>1 as made; the fraction of emission left; 0 = dead.</summary>
        Emission,
    }

    public override int Ports => 2;
    public override int Constants => 10;

    public override void Evaluate(ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> constants, Span<Lane> currents, Span<Lane> slopes)
    {
        var anode = Positive(volts[0], out var positive);
        var grid = volts[1];
        var emission = constants[(int)Constant.Emission];
        var kp = constants[(int)Constant.Kp];
        var root = Vector256.Sqrt(constants[(int)Constant.Kvb] + (anode * anode));
        var v = grid + constants[(int)Constant.ContactVolts];
        var soft = Lanes.SoftPlus(kp * ((Lanes.One / constants[(int)Constant.Mu]) + (v / root)), out var sigma);
        var drive = anode * soft / kp;
        var byGrid = anode * sigma / root;
        var byAnode = (soft / kp) - (sigma * v * anode * anode / (root * root * root));
        var current = PowerLaw(drive, constants[(int)Constant.Ex], 2 * emission / constants[(int)Constant.Kg1], out var perDrive);
        currents[0] = current;
        slopes[0] = perDrive * byAnode * positive;
        slopes[1] = perDrive * byGrid;
        GridCurrent(
            grid,
            constants[(int)Constant.GridAmps] * emission,
            constants[(int)Constant.GridSharpness],
            constants[(int)Constant.GridExponent],
            out currents[1],
            out slopes[3]
        );
        slopes[2] = Lanes.Zero;
    }

    /// <summary>x where it is positive, next to nothing where it is not, with a rounded corner of 20 mV; and its slope.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Lane Positive(Lane x, out Lane slope)
    {
        const double Corner = 0.02;
        var root = Vector256.Sqrt((x * x) + Lanes.All(Corner * Corner));
        var negative = Vector256.LessThan(x, Lanes.Zero);
        slope = 0.5 * (Lanes.One + (x / root));

        // For negative x the plain sum loses its digits.
        return Lanes.Choose(negative, 0.5 * Corner * Corner * Lanes.One / (root - x), 0.5 * (x + root));
    }

    /// <summary>factor x^exponent for x &gt;= 0, and its slope.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static Lane PowerLaw(Lane x, Lane exponent, Lane factor, out Lane slope)
    {
        var safe = Vector256.Max(x, Lanes.All(1e-30));
        var value = factor * Lanes.Power(safe, exponent);
        slope = value * exponent / safe;
        return value;
    }

    /// <summary>Grid current, amperes: Gg (L(Cg Vg) / Cg)^xi.</summary>
    internal static void GridCurrent(Lane grid, Lane amps, Lane sharpness, Lane exponent, out Lane current, out Lane slope)
    {
        // So far below its knee the law says less than a picoampere; each lane for itself, whatever its neighbours do.
        var asleep = Vector256.LessThan(sharpness * grid, Lanes.All(-14));
        if (asleep.ExtractMostSignificantBits() == 0xF)
        {
            (current, slope) = (Lanes.Zero, Lanes.Zero);
            return;
        }

        var soft = Lanes.SoftPlus(sharpness * grid, out var sigma);
        current = Vector256.AndNot(PowerLaw(soft / sharpness, exponent, amps, out var perVolt), asleep);
        slope = Vector256.AndNot(perVolt * sigma, asleep);
    }

    public override Lane Moved(ReadOnlySpan<Lane> before, ReadOnlySpan<Lane> after, ReadOnlySpan<Lane> constants) =>
        Beyond(before[0], after[0], AnodeBend(before[0]))
        | Beyond(before[1], after[1], GridBend(constants[(int)Constant.GridSharpness]));

    /// <summary>Volts of an anode or screen over which the law bends: its corner near nothing, a tenth of what stands there above.</summary>
    internal static Lane AnodeBend(Lane volts) => Vector256.Max(Lanes.All(0.02), 0.1 * volts);

    /// <summary>Volts of a grid over which the law bends: the grid current's knee.</summary>
    internal static Lane GridBend(Lane sharpness) => Lanes.One / sharpness;

    public override void Limit(ReadOnlySpan<Lane> before, Span<Lane> volts, ReadOnlySpan<Lane> constants)
    {
        // The three-halves law rises steeply with the grid: strides of a few grid bases at a time keep Newton in hand.
        var stride = Lanes.All(2) + (Lanes.All(0.5) * Vector256.Abs(before[1]));
        volts[1] = Vector256.Min(Vector256.Max(volts[1], before[1] - (4 * stride)), before[1] + stride);
    }
}
