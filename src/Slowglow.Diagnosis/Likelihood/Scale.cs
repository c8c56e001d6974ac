using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Likelihood;

/// <summary>
/// The scale that readings of a kind are compared on. DC and diode volts as they are; ohms, ac, ripple, levels and inlet current by
/// logarithm, since they span decades, with a floor below which figures mean nothing.
/// </summary>
internal readonly struct Scale
{
    private readonly double floor;

    private Scale(double floor) => this.floor = floor;

    /// <summary>Linear for volts dc and diode test.</summary>
    public bool IsLinear => floor == 0;

    public static Scale Of(Probe probe) => new(FloorOf(probe));

    /// <summary>From base units to the scale.</summary>
    public double To(double value) => IsLinear ? value : Math.Log(Math.Abs(value) + floor);

    /// <summary>Back to base units; never below zero on a logarithmic scale.</summary>
    public double From(double scaled) => IsLinear ? scaled : Math.Max(Math.Exp(scaled) - floor, 0);

    /// <summary>Derivative of the scale at a value in base units.</summary>
    public double Slope(double value) => IsLinear ? 1 : 1 / (Math.Abs(value) + floor);

    /// <summary>Volts, amperes or ohms: contact resistance, stray pick-up and the residue of ranges are of this size.</summary>
    private static double FloorOf(Probe probe) =>
        probe switch
        {
            { IsInlet: true } => 2e-3,
            { Kind: ProbeKind.Ohm } => 0.5,
            { Kind: ProbeKind.Ac } => 2e-3,
            { Kind: ProbeKind.Level } => 1e-3,
            _ => 0,
        };
}
