namespace Slowglow.Circuits.Solved;

/// <summary>
/// A tungsten lamp in the mains lead. Its resistance follows its own rms volts: current over rated current against volts over rated volts,
/// by resistivity and radiated power at low volts and the 0.55 power near the rating (reference/lamp_normalised_curve.csv).
/// </summary>
internal static class LimiterLamp
{
    private static readonly double[] VoltsRatio = [0.018, 0.039, 0.072, 0.120, 0.184, 0.267, 0.370, 0.493, 0.639, 0.807, 1.0];
    private static readonly double[] AmpsRatio = [0.080, 0.132, 0.196, 0.272, 0.358, 0.452, 0.553, 0.658, 0.768, 0.883, 1.0];

    /// <summary>Cold resistance over hot: 1/14.5.</summary>
    private const double ColdOverHot = 0.069;

    /// <summary>Ohms of a lamp of those rated watts and volts with <paramref name="volts"/> rms across it.</summary>
    public static double Ohms(double watts, double ratedVolts, double volts)
    {
        var hot = ratedVolts * ratedVolts / watts;
        var x = Math.Max(volts, 0) / ratedVolts;
        if (x >= 1)
        {
            return hot * Math.Pow(x, 0.45);
        }

        if (x <= VoltsRatio[0])
        {
            var first = VoltsRatio[0] / AmpsRatio[0];
            return hot * (ColdOverHot + ((first - ColdOverHot) * x / VoltsRatio[0]));
        }

        var k = Array.FindIndex(VoltsRatio, v => v >= x);
        var share = Math.Log(x / VoltsRatio[k - 1]) / Math.Log(VoltsRatio[k] / VoltsRatio[k - 1]);
        var amps = AmpsRatio[k - 1] * Math.Pow(AmpsRatio[k] / AmpsRatio[k - 1], share);
        return hot * x / amps;
    }
}
