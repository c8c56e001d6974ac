using System.Runtime.Intrinsics;
using Slowglow.Circuits.Models.Diode;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Transistor;

/// <summary>
/// JFET or MOSFET by the square law with channel-length modulation, either way round; a JFET has its two gate junctions, a MOSFET its
/// body diode. Ports: drain, gate; reference source.
/// </summary>
internal sealed class FieldEffectLaw : Law
{
    internal enum Constant
    {
        /// <summary>+1 n-channel, -1 p-channel.</summary>
        Polarity,

        /// <summary>A/V^2 in Id = beta (Vgs - Vto)^2.</summary>
        Beta,
        ThresholdVolts,
        Lambda,

        /// <summary>Of each gate junction; 0 for an insulated gate.</summary>
        GateSaturationAmps,

        /// <summary>Of the diode from source to drain; 0 for a JFET.</summary>
        BodySaturationAmps,

        /// <summary>1 as made; 0 = channel open.</summary>
        Channel,
    }

    private const double Vt = DiodeLaw.ThermalVolts;

    public override int Ports => 2;
    public override int Constants => 7;

    public override void Evaluate(ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> constants, Span<Lane> currents, Span<Lane> slopes)
    {
        var sign = constants[(int)Constant.Polarity];
        var vds = sign * volts[0];
        var vgs = sign * volts[1];
        var back = Vector256.LessThan(vds, Lanes.Zero);
        var drain = Vector256.Abs(vds);
        var gate = Lanes.Choose(back, vgs - vds, vgs);
        var over = Vector256.Max(gate - constants[(int)Constant.ThresholdVolts], Lanes.Zero);
        var beta = constants[(int)Constant.Beta] * constants[(int)Constant.Channel];
        var lambda = constants[(int)Constant.Lambda];
        var modulation = Lanes.One + (lambda * drain);
        var reach = Vector256.Min(drain, over);
        var shape = reach * ((2 * over) - reach);
        var id = beta * shape * modulation;
        var byDrain = beta * ((2 * Vector256.Max(over - drain, Lanes.Zero) * modulation) + (shape * lambda));
        var byGate = beta * 2 * reach * modulation;

        // Turned round: Id = -f(|vds|, vgs - vds).
        currents[0] = sign * Lanes.Choose(back, -id, id);
        slopes[0] = Lanes.Choose(back, byDrain + byGate, byDrain);
        slopes[1] = Lanes.Choose(back, -byGate, byGate);
        AddJunctions(sign, vds, vgs, constants, currents, slopes);
    }

    private static void AddJunctions(
        Lane sign,
        Lane vds,
        Lane vgs,
        ReadOnlySpan<Lane> constants,
        Span<Lane> currents,
        Span<Lane> slopes
    )
    {
        var gateAmps = constants[(int)Constant.GateSaturationAmps];
        var toSource = Junction(vgs, gateAmps, out var toSourceSlope);
        var toDrain = Junction(vgs - vds, gateAmps, out var toDrainSlope);
        var body = Junction(-vds, constants[(int)Constant.BodySaturationAmps], out var bodySlope);
        currents[0] -= sign * (toDrain + body);
        currents[1] = sign * (toSource + toDrain);
        slopes[0] += toDrainSlope + bodySlope;
        slopes[1] -= toDrainSlope;
        slopes[2] = -toDrainSlope;
        slopes[3] = toSourceSlope + toDrainSlope;
    }

    private static Lane Junction(Lane v, Lane saturation, out Lane slope)
    {
        var x = v * (1 / Vt);
        var held = Vector256.Min(x, Lanes.All(45));
        var e = Lanes.Exp(held);
        slope = saturation * e * (1 / Vt);
        return (saturation * (e - Lanes.One)) + (slope * Vt * (x - held));
    }

    public override void Limit(ReadOnlySpan<Lane> before, Span<Lane> volts, ReadOnlySpan<Lane> constants)
    {
        var stride = Lanes.All(0.5) + (0.5 * Vector256.Abs(before[1]));
        volts[1] = Vector256.Min(Vector256.Max(volts[1], before[1] - stride), before[1] + stride);
    }
}
