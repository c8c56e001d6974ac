namespace Slowglow.Circuits;

/// <summary>A way by which hum reaches the output.</summary>
/// <param name="Net">The rectified rail whose ripple it is; "" for all that does not come by a rail.</param>
/// <param name="RippleVolts">Ripple of the rail itself, or ac on the heater, volts rms; NaN for the rest.</param>
/// <param name="OutputVolts">What of it stands at the output, volts rms.</param>
/// <param name="MainVolts">Of that, at the mains frequency.</param>
/// <param name="TwiceVolts">Of that, at twice the mains frequency.</param>
/// <param name="Heater">Designator of the valve whose heater leaks it to the cathode; "" for any other way.</param>
public sealed record HumCause(
    string Net,
    double RippleVolts,
    double OutputVolts,
    double MainVolts,
    double TwiceVolts,
    string Heater = ""
);
