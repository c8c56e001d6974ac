using System.Runtime.Intrinsics;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.OpAmp;

/// <summary>
/// One section of an op-amp: a saturating amplifier between its rails behind an output resistance; takes its standing current and all
/// output current from its supply pins, and does nothing without them. Ports: in+, in-, out, v+; reference v-.
/// </summary>
internal sealed class OpAmpLaw : Law
{
    internal enum Constant
    {
        Gain,
        OutputOhms,
        RoomHigh,
        RoomLow,
        StandingAmps,
        BiasAmps,
        OffsetVolts,

        /// <summary>Hertz of the open-loop pole: gain-bandwidth over gain.</summary>
        PoleHertz,

        /// <summary>0 as made, +1 stuck high, -1 stuck low.</summary>
        Stuck,

        /// <summary>Most the output gives or takes.</summary>
        LimitAmps,
    }

    private const double CrossoverAmps = 1e-5;

    /// <summary>The least that common types are made for is some 3 to 5 V between the rails.</summary>
    private const double WakingVolts = 2.5;
    private const int Positive = 0;
    private const int Negative = 1;
    private const int Out = 2;
    private const int Supply = 3;

    public override int Ports => 4;
    public override int Constants => 10;

    public override int PoleConstant(int port) => port is Positive or Negative ? (int)Constant.PoleHertz : -1;

    public override void Evaluate(ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> constants, Span<Lane> currents, Span<Lane> slopes)
    {
        slopes[..16].Clear();
        var supply = volts[Supply];
        var half = Half(supply, constants, out var halfSlope);
        var awake = Waking.At(supply, WakingVolts, out var awakeSlope);

        // Between the rooms left at either rail; between the rails themselves when the supply has gone.
        var skew = 0.5 * (constants[(int)Constant.RoomLow] - constants[(int)Constant.RoomHigh]);
        var middle = (0.5 * supply) + (skew * awake);
        var middleSlope = Lanes.All(0.5) + (skew * awakeSlope);
        var stuck = constants[(int)Constant.Stuck];
        var free = Lanes.One - Vector256.Abs(stuck);
        var difference = volts[Positive] - volts[Negative] + constants[(int)Constant.OffsetVolts];
        var gain = constants[(int)Constant.Gain] * awake;
        var argument = gain * difference / half;
        var t = Lanes.Tanh(argument, out var tSlope);
        var position = (free * t) + stuck;
        var inside = middle + (half * position);
        var byInput = free * tSlope * gain;
        var byGain = free * tSlope * difference * constants[(int)Constant.Gain] * awakeSlope;
        var bySupply = middleSlope + (halfSlope * (position - (free * tSlope * argument))) + byGain;

        // Without a supply the output stage passes nothing: it would take its current from a rail that has none to give.
        var made = Lanes.One / constants[(int)Constant.OutputOhms];
        var siemens = awake * made;
        var output = Limited((volts[Out] - inside) * siemens, constants[(int)Constant.LimitAmps], out var held);
        var waking = held * awakeSlope * made * (volts[Out] - inside);
        siemens *= held;
        currents[Out] = output;
        slopes[(Out * 4) + Positive] = -byInput * siemens;
        slopes[(Out * 4) + Negative] = byInput * siemens;
        slopes[(Out * 4) + Out] = siemens;
        slopes[(Out * 4) + Supply] = waking - (bySupply * siemens);

        // What flows out of the output comes in at v+, what flows in leaves at v-; the change-over is rounded.
        var sourced = CrossoverAmps * Lanes.SoftPlus(output * (-1 / CrossoverAmps), out var sourcing);
        var drawn = constants[(int)Constant.StandingAmps] + sourced;
        currents[Supply] = drawn * awake;
        for (var q = 0; q < 4; q++)
        {
            slopes[(Supply * 4) + q] = -awake * sourcing * slopes[(Out * 4) + q];
        }

        slopes[(Supply * 4) + Supply] += drawn * awakeSlope;
        currents[Positive] = currents[Negative] = constants[(int)Constant.BiasAmps] * awake;
        slopes[(Positive * 4) + Supply] = slopes[(Negative * 4) + Supply] = constants[(int)Constant.BiasAmps] * awakeSlope;
    }

    /// <summary>The output stage follows until near its most, and then holds it: i / (1 + (i / most)^4)^(1/4).</summary>
    private static Lane Limited(Lane amps, Lane most, out Lane slope)
    {
        var share = amps / most;
        var power = Lanes.One + (share * share * share * share);
        var root = Vector256.Sqrt(Vector256.Sqrt(power));
        slope = Lanes.One / (power * root);
        return amps / root;
    }

    /// <summary>Half the swing left between the rails; a smooth floor of some millivolts where the supply is too low.</summary>
    private static Lane Half(Lane supply, ReadOnlySpan<Lane> constants, out Lane slope)
    {
        const double Soft = 0.05;
        var swing = 0.5 * (supply - constants[(int)Constant.RoomHigh] - constants[(int)Constant.RoomLow]);
        var half = Soft * Lanes.SoftPlus(swing * (1 / Soft), out var sigma);
        slope = 0.5 * sigma;
        return half + Lanes.All(1e-3);
    }

    public override Lane Moved(ReadOnlySpan<Lane> before, ReadOnlySpan<Lane> after, ReadOnlySpan<Lane> constants)
    {
        // The input bends it over what drives the output from rail to rail; the output, by the change-over between sourcing and sinking, which
        // matters by its amperes alone: a hundredth of it is 1e-10 A.
        var input = before[Positive] - before[Negative];
        var room = (Vector256.Abs(before[Supply]) + Lanes.One) / constants[(int)Constant.Gain];
        var changeOver = 30 * CrossoverAmps * constants[(int)Constant.OutputOhms];
        return Beyond(
                input,
                after[Positive] - after[Negative],
                Vector256.Min(0.1 * room, changeOver / constants[(int)Constant.Gain])
            )
            | Beyond(before[Out], after[Out], changeOver)
            | Beyond(before[Supply], after[Supply], changeOver);
    }

    public override void Limit(ReadOnlySpan<Lane> before, Span<Lane> volts, ReadOnlySpan<Lane> constants)
    {
        // Each lane for itself: whether a small step is held must not hang on what the neighbours do.
        var small = Small(before, volts, constants);
        if (small.ExtractMostSignificantBits() == 0xF)
        {
            return;
        }

        var (positive, output) = (volts[Positive], volts[Out]);

        // Linearised by its output: the tangent says where the output would go; the input that gives that output is the next point.
        var half = Vector256.Max(Half(before[Supply], constants, out _), Half(volts[Supply], constants, out _));
        var gain = constants[(int)Constant.Gain];
        var offset = constants[(int)Constant.OffsetVolts];
        var was = gain * (before[Positive] - before[Negative] + offset) / half;
        var wants = gain * (volts[Positive] - volts[Negative] + offset) / half;
        var t = Lanes.Tanh(was, out var slope);
        var foretold = t + (slope * (wants - was));
        var held = Vector256.Min(Vector256.Max(foretold, Lanes.All(-0.999)), Lanes.All(0.999));
        var next = 0.5 * Lanes.Log((Lanes.One + held) / (Lanes.One - held));

        // Deep in saturation and staying there: believe the input. Leaving it: start again at zero.
        var deep = Vector256.GreaterThan(Vector256.Abs(was), Lanes.All(4));
        var same = Vector256.GreaterThan(was * wants, Lanes.Zero) & Vector256.GreaterThan(Vector256.Abs(wants), Lanes.All(4));
        next = Lanes.Choose(deep, Lanes.Choose(same, wants, Lanes.Zero), next);
        var into =
            Vector256.GreaterThan(Vector256.Abs(held), Lanes.All(0.99899))
            & Vector256.GreaterThan(Vector256.Abs(wants), Lanes.All(4));
        next = Lanes.Choose(into & ~deep & Vector256.GreaterThan(Vector256.Abs(was), Lanes.All(3)), wants, next);

        // Small steps in the linear part are left as they are.
        var near = Vector256.LessThan(Vector256.Abs(wants - was), Lanes.All(0.5));
        next = Lanes.Choose(near, wants, next);

        // While the supply is still on its way, wait in the middle.
        var moving = Vector256.GreaterThan(
            Vector256.Abs(volts[Supply] - before[Supply]),
            Lanes.All(0.5) + (0.2 * Vector256.Abs(volts[Supply]))
        );
        next = Lanes.Choose(moving, Lanes.Zero, next);
        volts[Positive] += (next - wants) * half / gain;
        LimitOutput(before, volts, constants);
        volts[Positive] = Lanes.Choose(small, positive, volts[Positive]);
        volts[Out] = Lanes.Choose(small, output, volts[Out]);
    }

    /// <summary>Steps that move the output by little beside what bends it need no holding.</summary>
    private static Lane Small(ReadOnlySpan<Lane> before, Span<Lane> volts, ReadOnlySpan<Lane> constants)
    {
        var least = Vector256.Min(
            Lanes.All(0.05),
            0.05 * constants[(int)Constant.LimitAmps] * constants[(int)Constant.OutputOhms]
        );
        var input = constants[(int)Constant.Gain] * (volts[Positive] - volts[Negative] - before[Positive] + before[Negative]);
        var most = Vector256.Max(
            Vector256.Abs(input),
            Vector256.Max(Vector256.Abs(volts[Out] - before[Out]), Vector256.Abs(volts[Supply] - before[Supply]))
        );
        return Vector256.LessThan(most, least);
    }

    /// <summary>
    /// Beyond the most that the output gives its tangent is all but flat, and a step along it goes anywhere: held to where the output stage
    /// is a resistance, or to just beyond when it starts there.
    /// </summary>
    private static void LimitOutput(ReadOnlySpan<Lane> before, Span<Lane> volts, ReadOnlySpan<Lane> constants)
    {
        var edge = constants[(int)Constant.LimitAmps] * constants[(int)Constant.OutputOhms];
        var inside = Inside(volts, constants);
        var was = before[Out] - Inside(before, constants);
        var wants = volts[Out] - inside;
        var most = Lanes.Choose(Vector256.GreaterThan(Vector256.Abs(was), edge), Vector256.Abs(was) + (4 * edge), 2 * edge);
        var crosses = Vector256.LessThan(was * wants, Lanes.Zero) & Vector256.GreaterThan(Vector256.Abs(was), edge);
        var held = Vector256.Min(Vector256.Max(wants, -most), most);
        held = Lanes.Choose(crosses, Lanes.Zero, held);
        volts[Out] = Lanes.Choose(Vector256.Equals(held, wants), volts[Out], inside + held);
    }

    /// <summary>Volts that the amplifier puts behind its output resistance.</summary>
    private static Lane Inside(ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> constants)
    {
        var supply = volts[Supply];
        var awake = Lanes.Tanh(Vector256.Max(supply, Lanes.Zero) * (1.0 / 3), out _);
        var skew = 0.5 * (constants[(int)Constant.RoomLow] - constants[(int)Constant.RoomHigh]);
        var half = Half(supply, constants, out _);
        var difference = volts[Positive] - volts[Negative] + constants[(int)Constant.OffsetVolts];
        var stuck = constants[(int)Constant.Stuck];
        var t = Lanes.Tanh(constants[(int)Constant.Gain] * awake * difference / half, out _);
        return (0.5 * supply) + (skew * awake) + (half * (((Lanes.One - Vector256.Abs(stuck)) * t) + stuck));
    }
}
