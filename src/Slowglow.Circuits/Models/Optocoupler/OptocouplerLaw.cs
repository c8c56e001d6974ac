using System.Runtime.Intrinsics;
using Slowglow.Circuits.Models.Diode;
using Slowglow.Solving;

namespace Slowglow.Circuits.Models.Optocoupler;

/// <summary>
/// An LED beside a light-dependent resistor: the LED as <see cref="DiodeLaw"/> has it, the resistor's siemens by a power of the LED's
/// current over those it has in the dark. Ports: anode, cathode, one end of the resistor; reference its other end.
/// </summary>
internal sealed class OptocouplerLaw : Law
{
    internal enum Constant
    {
        SaturationAmps,
        Ideality,
        SeriesOhms,

        /// <summary>Of the resistor, with <see cref="Amps"/> through the LED.</summary>
        Ohms,
        Amps,
        Gamma,
        DarkOhms,

        /// <summary>1 as made, 0 for an LED that gives no light and draws no current.</summary>
        Working,

        /// <summary>1 as made, 0 for an open resistor.</summary>
        Resistor,
    }

    /// <summary>Light at which the power law starts.</summary>
    private const double LeastAmps = 1e-7;

    public override int Ports => 3;
    public override int Constants => 9;

    public override void Evaluate(ReadOnlySpan<Lane> volts, ReadOnlySpan<Lane> constants, Span<Lane> currents, Span<Lane> slopes)
    {
        slopes[..9].Clear();
        var knee = constants[(int)Constant.Ideality] * DiodeLaw.ThermalVolts;
        var saturation = constants[(int)Constant.SaturationAmps];
        var working = constants[(int)Constant.Working];
        var forward = DiodeLaw.Exponential(
            volts[0] - volts[1],
            knee,
            constants[(int)Constant.SeriesOhms],
            saturation,
            out var slope
        );
        var led = working * (forward - saturation);
        slope *= working;
        currents[0] = led;
        currents[1] = -led;
        slopes[0] = slopes[4] = slope;
        slopes[1] = slopes[3] = -slope;

        // Lit from a tenth of a microampere up; the exponent of the light is the resistor's gamma.
        var light = Vector256.Max(led, Lanes.Zero) + Lanes.All(LeastAmps);
        var lit =
            constants[(int)Constant.Resistor]
            * Lanes.Power(light / constants[(int)Constant.Amps], constants[(int)Constant.Gamma]);
        var siemens =
            (constants[(int)Constant.Resistor] / constants[(int)Constant.DarkOhms]) + (lit / constants[(int)Constant.Ohms]);
        var byLed = constants[(int)Constant.Gamma] * lit / (constants[(int)Constant.Ohms] * light);
        byLed = Lanes.Choose(Vector256.GreaterThan(led, Lanes.Zero), byLed, Lanes.Zero) * slope * volts[2];
        currents[2] = siemens * volts[2];
        slopes[6] = byLed;
        slopes[7] = -byLed;
        slopes[8] = siemens;
    }

    /// <summary>The LED's forward volts are held below its knee on the way up, as a diode's are.</summary>
    public override void Limit(ReadOnlySpan<Lane> before, Span<Lane> volts, ReadOnlySpan<Lane> constants)
    {
        var knee = constants[(int)Constant.Ideality] * DiodeLaw.ThermalVolts;
        var top = knee * Lanes.Log(knee / (Lanes.All(1.414) * constants[(int)Constant.SaturationAmps]));
        var jump =
            Vector256.GreaterThan(volts[0] - volts[1], top)
            & Vector256.LessThan(before[0] - before[1], top)
            & Vector256.GreaterThan(constants[(int)Constant.Working], Lanes.Zero);
        volts[0] = Lanes.Choose(jump, volts[1] + top, volts[0]);
    }
}
