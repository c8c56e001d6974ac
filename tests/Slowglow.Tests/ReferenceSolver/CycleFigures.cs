namespace Slowglow.Tests.ReferenceSolver;

/// <summary>Mean and rms ripple over one mains cycle, by trapezoids over the solver's own uneven steps.</summary>
internal readonly record struct CycleFigures(double Mean, double Ripple)
{
    /// <summary>With the mean.</summary>
    public double Rms => Math.Sqrt((Mean * Mean) + (Ripple * Ripple));

    public static CycleFigures Of(double[] time, double[] volts, double from, double to)
    {
        double area = 0;
        double square = 0;
        for (var i = 1; i < time.Length; i++)
        {
            var (t0, t1) = (Math.Max(time[i - 1], from), Math.Min(time[i], to));
            if (t1 <= t0)
            {
                continue;
            }

            var (v0, v1) = (At(time, volts, i, t0), At(time, volts, i, t1));
            area += (t1 - t0) * (v0 + v1) / 2;
            square += (t1 - t0) * ((v0 * v0) + (v0 * v1) + (v1 * v1)) / 3;
        }

        var mean = area / (to - from);
        return new CycleFigures(mean, Math.Sqrt(Math.Max((square / (to - from)) - (mean * mean), 0)));
    }

    private static double At(double[] time, double[] volts, int i, double t) =>
        volts[i - 1] + ((volts[i] - volts[i - 1]) * (t - time[i - 1]) / (time[i] - time[i - 1]));
}
