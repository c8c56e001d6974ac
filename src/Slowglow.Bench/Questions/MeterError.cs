using Slowglow.Sheets.Readings;

namespace Slowglow.Bench.Questions;

/// <summary>What the meter adds to the spread of a reading.</summary>
internal static class MeterError
{
    private const double FinestVolts = 1e-4;
    private const double FinestOhms = 0.1;
    private const double FinestAmps = 1e-5;

    /// <summary>One standard deviation in base units: the class's relative error and one count of the range the value falls in.</summary>
    public static double Sigma(Probe probe, double value, MeterClass meter)
    {
        var relative = probe.Kind switch
        {
            ProbeKind.Ohm => meter.OhmError,
            ProbeKind.Dc or ProbeKind.Diode => meter.DcError,
            _ => meter.AcError,
        };
        var share = relative * value;
        var count = Count(probe, Math.Abs(value), meter);
        return Math.Sqrt((share * share) + (count * count));
    }

    /// <summary>Value of the last digit on the range that a size falls in, base units.</summary>
    public static double Count(Probe probe, double magnitude, MeterClass meter)
    {
        var count = probe switch
        {
            { IsInlet: true } => FinestAmps,
            { Kind: ProbeKind.Ohm } => FinestOhms,
            _ => FinestVolts,
        };
        while (count * meter.Counts < magnitude)
        {
            count *= 10;
        }
        return count;
    }
}
