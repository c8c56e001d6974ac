using System.Runtime.Intrinsics;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Regulator;

/// <summary>
/// Three-terminal regulator, either polarity: holds its volts between out and the reference while the input leaves it its dropout,
/// passes the input less the dropout when not, limits its current, sinks none. Ports: in, out; reference gnd or adj.
/// </summary>
internal sealed class RegulatorLaw : Law
{
    internal enum Constant
    {
        /// <summary>+1 positive, -1 negative.</summary>
        Polarity,
        Volts,
        DropoutVolts,
        LimitAmps,
        StandingAmps,
        OutputOhms,

        /// <summary>1 as made; 0 = passes nothing.</summary>
        Working,
    }

    private const double Corner = 0.02;
    private const double SoftAmps = 1e-5;
    private const double WakingVolts = 3;

    public override int Ports => 2;
    public override int Constants => 7;

    public override void Evaluate(ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> constants, Span<Lane> currents, Span<Lane> slopes)
    {
        var sign = constants[(int)Constant.Polarity];
        var input = sign * volts[0];
        var output = sign * volts[1];
        var working = constants[(int)Constant.Working];

        var aim = Aim(input, constants, out var aimByInput);
        var siemens = Lanes.One / constants[(int)Constant.OutputOhms];
        var soft = SoftAmps * Lanes.SoftPlus((aim - output) * siemens * (1 / SoftAmps), out var sigma);
        var limit = constants[(int)Constant.LimitAmps];
        var current = working * limit * Lanes.Tanh(soft / limit, out var held);
        var byAim = working * held * sigma * siemens;

        var awake = Waking.At(input, WakingVolts, out var awakeSlope);
        var standing = constants[(int)Constant.StandingAmps] * working;
        currents[0] = sign * (current + (standing * awake));
        currents[1] = -sign * current;
        slopes[0] = (byAim * aimByInput) + (standing * awakeSlope);
        slopes[1] = -byAim;
        slopes[2] = -byAim * aimByInput;
        slopes[3] = byAim;
    }

    /// <summary>
    /// Between passing nothing and passing all it can, both without slope, the law is a steep line: steps are taken in the current it
    /// is asked for, and enter the line where they meet it.
    /// </summary>
    public override void Limit(ReadOnlySpan<Lane> before, Span<Lane> volts, ReadOnlySpan<Lane> constants)
    {
        var sign = constants[(int)Constant.Polarity];
        var limit = constants[(int)Constant.LimitAmps];
        var ohms = constants[(int)Constant.OutputOhms];
        var aim = Aim(sign * volts[0], constants, out _);
        var wants = (aim - (sign * volts[1])) / ohms;
        var was = (Aim(sign * before[0], constants, out var byInput) - (sign * before[1])) / ohms;

        // The tangent knows nothing of the corner: what it foretells is a current.
        var foretold = was + (sign * ((byInput * (volts[0] - before[0])) - (volts[1] - before[1])) / ohms);
        var next = foretold;
        var wasOff = Vector256.LessThanOrEqual(was, Lanes.Zero);
        next = Lanes.Choose(wasOff, Vector256.Min(wants, 0.02 * limit), next);
        var wasFull = Vector256.GreaterThan(was, 1.5 * limit);
        next = Lanes.Choose(wasFull, Vector256.Max(wants, 0.5 * limit), next);
        var active = ~(wasOff | wasFull);
        next = Lanes.Choose(
            active,
            Vector256.Min(Vector256.Max(foretold, Lanes.All(-20 * SoftAmps)), Vector256.Max(2 * was, 1.6 * limit)),
            next
        );
        volts[1] = sign * (aim - (next * ohms));
    }

    /// <summary>Volts it would hold without load: the smaller of the set volts and what the input leaves, with a rounded corner.</summary>
    private static Lane Aim(Lane input, ReadOnlySpan<Lane> constants, out Lane byInput)
    {
        var set = constants[(int)Constant.Volts];
        var left = input - constants[(int)Constant.DropoutVolts];
        var difference = set - left;
        var root = Vector256.Sqrt((difference * difference) + Lanes.All(Corner * Corner));
        byInput = 0.5 * (Lanes.One + (difference / root));
        return 0.5 * (set + left - root);
    }
}
