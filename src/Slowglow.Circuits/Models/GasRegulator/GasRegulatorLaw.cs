using Slowglow.Solving;

namespace Slowglow.Circuits.Models.GasRegulator;

/// <summary>A glow: nothing below the maintaining volts, a resistance above them. Port: anode; reference cathode.</summary>
internal sealed class GasRegulatorLaw : Law
{
    internal enum Constant
    {
        MaintainingVolts,

        /// <summary>Slope of the glow, ohms.</summary>
        Ohms,

        /// <summary>1 while the gas glows, 0 while it is dark.</summary>
        Glow,
    }

    /// <summary>Rounding of the corner.</summary>
    private const double CornerAmps = 2e-5;

    public override int Ports => 1;
    public override int Constants => 3;

    public override void Evaluate(ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> constants, Span<Lane> currents, Span<Lane> slopes)
    {
        var ohms = constants[(int)Constant.Ohms];
        var over = (volts[0] - constants[(int)Constant.MaintainingVolts]) / (ohms * CornerAmps);
        var glow = constants[(int)Constant.Glow];
        currents[0] = glow * CornerAmps * Lanes.SoftPlus(over, out var slope);
        slopes[0] = glow * slope / ohms;
    }
}
