using Slowglow.Sheets.Readings;

namespace Slowglow.Diagnosis.Likelihood;

/// <summary>
/// What a reading may be off by beside the tolerances of parts: the meter (relative error and resolution) and the model
/// (2 % of DC volts and ohms, 5 % of ac and levels, 10 % of inlet current, and a small absolute part): judgement, stated in docs/diagnosis.md.
/// </summary>
internal static class ErrorModel
{
    private const double AbsoluteDcVolts = 0.012;
    private const double AbsoluteDiodeVolts = 0.02;

    /// <summary>One standard deviation on the probe's scale, at the value given in base units.</summary>
    public static double Variance(Probe probe, MeterClass meter, double value)
    {
        var size = Math.Abs(value);
        var relative = Square(ModelError(probe)) + Square(MeterError(probe, meter));
        var absolute = Square(AbsoluteError(probe)) + Square(Resolution(size, meter)) / 12;
        return (relative * size * size + absolute) * Square(Scale.Of(probe).Slope(value));
    }

    /// <summary>Value of the last digit on the range that the value falls in, base units; ranges run 1-1-1 from the full count.</summary>
    public static double Resolution(double size, MeterClass meter)
    {
        var digits = Math.Ceiling(Math.Log10(Math.Max(size, 1e-4) / meter.Counts));
        return Math.Pow(10, digits);
    }

    private static double ModelError(Probe probe) =>
        probe.IsInlet ? 0.1
        : probe.Kind is ProbeKind.Ac or ProbeKind.Level ? 0.05
        : 0.02;

    public static double MeterError(Probe probe, MeterClass meter) =>
        probe.Kind switch
        {
            ProbeKind.Ohm => meter.OhmError,
            ProbeKind.Ac or ProbeKind.Level => meter.AcError,
            _ => meter.DcError,
        };

    public static double AbsoluteError(Probe probe) =>
        probe.Kind switch
        {
            ProbeKind.Dc => AbsoluteDcVolts,
            ProbeKind.Diode => AbsoluteDiodeVolts,
            ProbeKind.Ohm => 0.1,
            ProbeKind.Level => 2e-4,
            _ => probe.IsInlet ? 1e-3 : 5e-4,
        };

    private static double Square(double x) => x * x;
}
