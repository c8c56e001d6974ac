using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Slowglow.Circuits.Models.Diode;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Transistor;

/// <summary>
/// Bipolar transistor: Ebers and Moll in transport form with the Early voltage (as the base-width term of Gummel and Poon, Bell System
/// Technical Journal 49, 1970). Ports: collector, base; reference emitter.
/// </summary>
internal sealed class BjtLaw : Law
{
    internal enum Constant
    {
        /// <summary>+1 npn, -1 pnp.</summary>
        Polarity,
        SaturationAmps,
        ForwardGain,
        ReverseGain,
        EarlyVolts,

        /// <summary>1 as made; 0 when collector, base or emitter is open.</summary>
        Transport,

        /// <summary>1 as made; 0 when the base-emitter junction is open.</summary>
        BaseEmitter,

        /// <summary>1 as made; 0 when the base-collector junction is open.</summary>
        BaseCollector,
    }

    private const double Vt = DiodeLaw.ThermalVolts;

    public override int Ports => 2;
    public override int Constants => 8;

    public override void Evaluate(ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> constants, Span<Lane> currents, Span<Lane> slopes)
    {
        var sign = constants[(int)Constant.Polarity];
        var vbe = sign * volts[1];
        var vbc = sign * (volts[1] - volts[0]);
        var saturation = constants[(int)Constant.SaturationAmps];
        var forward = Junction(vbe, saturation, out var forwardSlope);
        var reverse = Junction(vbc, saturation, out var reverseSlope);
        var perEarly = Lanes.One / constants[(int)Constant.EarlyVolts];
        var width = Lanes.One - (vbc * perEarly);
        var transport = constants[(int)Constant.Transport];
        var base1 = constants[(int)Constant.BaseEmitter] / constants[(int)Constant.ForwardGain];
        var base2 = constants[(int)Constant.BaseCollector] / constants[(int)Constant.ReverseGain];

        currents[0] = sign * ((transport * (forward - reverse) * width) - (base2 * reverse));
        currents[1] = sign * ((base1 * forward) + (base2 * reverse));

        var byVbe = transport * forwardSlope * width;
        var byVbc = (transport * ((-reverseSlope * width) - ((forward - reverse) * perEarly))) - (base2 * reverseSlope);
        slopes[0] = -byVbc;
        slopes[1] = byVbe + byVbc;
        slopes[2] = -base2 * reverseSlope;
        slopes[3] = (base1 * forwardSlope) + (base2 * reverseSlope);
    }

    /// <summary>Is (e^(v/Vt) - 1), continued as a straight line far above any current a part survives.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lane Junction(Lane v, Lane saturation, out Lane slope)
    {
        var x = v * (1 / Vt);
        var held = Vector256.Min(x, Lanes.All(60));
        var e = Lanes.Exp(held);
        slope = saturation * e * (1 / Vt);
        return (saturation * (e - Lanes.One)) + (slope * Vt * (x - held));
    }

    public override Lane Moved(ReadOnlySpan<Lane> before, ReadOnlySpan<Lane> after, ReadOnlySpan<Lane> constants)
    {
        // A collector well out of saturation bends the law by the Early effect alone.
        var reverse = constants[(int)Constant.Polarity] * (before[0] - before[1]);
        var bend = Lanes.Choose(Vector256.GreaterThan(reverse, Lanes.All(20 * Vt)), Lanes.All(10), Lanes.All(Vt));
        return Beyond(before[0], after[0], bend) | Beyond(before[1], after[1], Lanes.All(Vt));
    }

    public override void Limit(ReadOnlySpan<Lane> before, Span<Lane> volts, ReadOnlySpan<Lane> constants)
    {
        var sign = constants[(int)Constant.Polarity];
        var vbe = LimitJunction(sign * before[1], sign * volts[1], constants[(int)Constant.SaturationAmps]);
        var vbc = LimitJunction(
            sign * (before[1] - before[0]),
            sign * (volts[1] - volts[0]),
            constants[(int)Constant.SaturationAmps]
        );

        // A junction that is open needs no holding, and held it would creep.
        var transport = constants[(int)Constant.Transport];
        var emitter = Vector256.GreaterThan(transport + constants[(int)Constant.BaseEmitter], Lanes.Zero);
        var collector = Vector256.GreaterThan(transport + constants[(int)Constant.BaseCollector], Lanes.Zero);
        vbe = Lanes.Choose(emitter, vbe, sign * volts[1]);
        vbc = Lanes.Choose(collector, vbc, sign * (volts[1] - volts[0]));
        volts[1] = sign * vbe;
        volts[0] = sign * (vbe - vbc);
    }

    /// <summary>Logarithmic steps above the knee of a junction; used by every exponential without a series resistance.</summary>
    internal static Lane LimitJunction(Lane before, Lane now, Lane saturation)
    {
        var far = Vector256.GreaterThan(now, Lanes.Zero) & Vector256.GreaterThan(Vector256.Abs(now - before), Lanes.All(2 * Vt));
        if (far == Lanes.Zero)
        {
            return now;
        }

        var knee = Vt * Lanes.Log(Lanes.All(Vt / 1.414) / saturation);
        var rise = far & Vector256.GreaterThan(now, knee);
        var step = (now - before) * (1 / Vt);
        var up = before + (Vt * Lanes.Log(Vector256.Max(Lanes.One + step, Lanes.All(1e-3))));
        var fromBelow = Vt * Lanes.Log(Vector256.Max(now * (1 / Vt), Lanes.All(1e-3)));
        var fromAbove = Lanes.Choose(Vector256.GreaterThan(step, Lanes.All(-1)), up, knee);
        var limited = Lanes.Choose(Vector256.GreaterThan(before, Lanes.Zero), fromAbove, fromBelow);
        return Lanes.Choose(rise, limited, now);
    }
}
