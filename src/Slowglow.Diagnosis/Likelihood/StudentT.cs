namespace Slowglow.Diagnosis.Likelihood;

/// <summary>Student's t with five degrees of freedom: heavy enough tails that one odd reading does not kill a suspect.</summary>
internal static class StudentT
{
    public const double Freedom = 5;

    /// <summary>Log of the normalising constant: Gamma(3) / (Gamma(2.5) sqrt(5 pi)).</summary>
    private static readonly double LogConstant = Math.Log(2 / (1.329340388179137 * Math.Sqrt(5 * Math.PI)));

    /// <summary>Log density at z standard widths from the centre, width <paramref name="sd"/>.</summary>
    public static double LogDensity(double z, double sd) =>
        LogConstant - Math.Log(sd) - (Freedom + 1) / 2 * Math.Log(1 + z * z / Freedom);

    /// <summary>Beyond this many widths the distribution is taken as done, and between two of its steps as straight.</summary>
    private const double Done = 12;
    private const int StepsEach = 64;
    private static readonly double[] Steps =
    [
        .. Enumerable.Range(0, (int)(2 * Done * StepsEach) + 2).Select(k => Cumulative(((double)k / StepsEach) - Done)),
    ];

    /// <summary>Distribution function within 1e-5 out to twelve widths, 0 or 1 beyond: for the many outcomes a reading may have.</summary>
    public static double CumulativeNearly(double z)
    {
        var at = (z + Done) * StepsEach;
        if (!(at > 0))
        {
            return 0;
        }
        if (at >= 2 * Done * StepsEach)
        {
            return 1;
        }
        var k = (int)at;
        return Steps[k] + ((at - k) * (Steps[k + 1] - Steps[k]));
    }

    /// <summary>Distribution function at z: closed form for five degrees of freedom.</summary>
    public static double Cumulative(double z)
    {
        var t = z / Math.Sqrt(Freedom);
        var c = 1 / (1 + t * t);
        return 0.5 + (Math.Atan(t) + t * c * (1 + 2.0 / 3 * c)) / Math.PI;
    }
}
