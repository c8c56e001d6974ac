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

    public override int Ports => 2;
    public override int Constants => 7;

    public override void Evaluate(ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> constants, Span<Lane> currents, Span<Lane> slopes)
    {
        var sign = constants[(int)Constant.Polarity];
        var input = sign * volts[0];
        var output = sign * volts[1];
        var working = constants[(int)Constant.Working];

        // Smaller of the set volts and what the input leaves, with a rounded corner.
        var set = constants[(int)Constant.Volts];
        var left = input - constants[(int)Constant.DropoutVolts];
        var difference = set - left;
        var root = Vector256.Sqrt((difference * difference) + Lanes.All(Corner * Corner));
        var aim = 0.5 * (set + left - root);
        var aimByInput = 0.5 * (Lanes.One + (difference / root));

        var siemens = Lanes.One / constants[(int)Constant.OutputOhms];
        var soft = SoftAmps * Lanes.SoftPlus((aim - output) * siemens * (1 / SoftAmps), out var sigma);
        var limit = constants[(int)Constant.LimitAmps];
        var current = working * limit * Lanes.Tanh(soft / limit, out var held);
        var byAim = working * held * sigma * siemens;

        var awake = Lanes.Tanh(Vector256.Max(input, Lanes.Zero) * 0.5, out var awakeSlope);
        awakeSlope = Lanes.Choose(Vector256.GreaterThan(input, Lanes.Zero), 0.5 * awakeSlope, Lanes.Zero);
        var standing = constants[(int)Constant.StandingAmps] * working;
        currents[0] = sign * (current + (standing * awake));
        currents[1] = -sign * current;
        slopes[0] = (byAim * aimByInput) + (standing * awakeSlope);
        slopes[1] = -byAim;
        slopes[2] = -byAim * aimByInput;
        slopes[3] = byAim;
    }

    public override void Limit(ReadOnlySpan<Lane> before, Span<Lane> volts, ReadOnlySpan<Lane> constants)
    {
        // In the limit or reverse the slope is nothing and tangents run away: a few volts at a time.
        for (var p = 0; p < 2; p++)
        {
            var stride = Lanes.All(3) + (0.5 * Vector256.Abs(before[p]));
            volts[p] = Vector256.Min(Vector256.Max(volts[p], before[p] - stride), before[p] + stride);
        }
    }
}
