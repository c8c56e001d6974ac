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

    /// <summary>Distribution function at z: closed form for five degrees of freedom.</summary>
    public static double Cumulative(double z)
    {
        var t = z / Math.Sqrt(Freedom);
        var c = 1 / (1 + t * t);
        return 0.5 + (Math.Atan(t) + t * c * (1 + 2.0 / 3 * c)) / Math.PI;
    }
}
