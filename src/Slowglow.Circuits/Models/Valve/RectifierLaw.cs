using System.Runtime.Intrinsics;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Valve;

/// <summary>One anode of a rectifier valve: I = K V^1.5. Port: anode; reference cathode.</summary>
internal sealed class RectifierLaw : Law
{
    internal enum Constant
    {
        Perveance,
        Emission,
    }

    public override int Ports => 1;
    public override int Constants => 2;

    public override void Evaluate(ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> constants, Span<Lane> currents, Span<Lane> slopes)
    {
        var v = TriodeLaw.Positive(volts[0], out var positive);
        var k = constants[(int)Constant.Perveance] * constants[(int)Constant.Emission];
        var root = Vector256.Sqrt(v);
        currents[0] = k * v * root;
        slopes[0] = 1.5 * k * root * positive;
    }

    public override Lane Moved(ReadOnlySpan<Lane> before, ReadOnlySpan<Lane> after, ReadOnlySpan<Lane> constants) =>
        Beyond(before[0], after[0], TriodeLaw.AnodeBend(before[0]));

    public override void Limit(ReadOnlySpan<Lane> before, Span<Lane> volts, ReadOnlySpan<Lane> constants)
    {
        // Out of cut-off the slope is nothing: start from a volt.
        var cut = Vector256.LessThanOrEqual(before[0], Lanes.Zero) & Vector256.GreaterThan(volts[0], Lanes.One);
        volts[0] = Lanes.Choose(cut, Lanes.One, volts[0]);
    }
}
