namespace Slowglow.Power.Energy;

/// <summary>
/// Capacitors that discharge into a resistive network and each other: (R C) dV/dt = -V, where R is the resistance the capacitors see as
/// ports. Stepped backwards in time steps that grow, so that milliseconds and days are followed alike.
/// </summary>
internal sealed class Decay(double[,] ohms, IReadOnlyList<double> farads)
{
    private const double FirstStep = 1e-4;
    private const double Growth = 1.004;

    /// <summary>Beyond this it is as good as never: a month, seconds.</summary>
    public const double Never = 30 * 86400.0;

    /// <summary>Seconds until each capacitor has fallen below each of the volts for good; infinite beyond a month.</summary>
    public double[,] Times(IReadOnlyList<double> start, IReadOnlyList<double> limits)
    {
        var n = farads.Count;
        var times = new double[n, limits.Count];
        var volts = start.ToArray();
        double now = 0,
            step = FirstStep;
        while (now < Never)
        {
            var before = (double[])volts.Clone();
            volts = Step(volts, step);
            for (var c = 0; c < n; c++)
            {
                for (var l = 0; l < limits.Count; l++)
                {
                    if (Math.Abs(volts[c]) >= limits[l])
                    {
                        times[c, l] = double.PositiveInfinity;
                    }
                    else if (double.IsInfinity(times[c, l]) || Math.Abs(before[c]) >= limits[l])
                    {
                        times[c, l] = now + (step * Crossing(before[c], volts[c], limits[l]));
                    }
                }
            }

            if (volts.All(v => Math.Abs(v) < 0.5 * limits.Min()))
            {
                break;
            }

            now += step;
            step *= Growth;
        }

        return times;
    }

    /// <summary>Share of a step after which the limit is crossed, on an exponential.</summary>
    private static double Crossing(double before, double after, double limit)
    {
        var (high, low) = (Math.Abs(before), Math.Max(Math.Abs(after), 1e-12));
        return high <= limit ? 0 : Math.Clamp(Math.Log(high / limit) / Math.Log(high / low), 0, 1);
    }

    /// <summary>Two steps of different length, their error extrapolated away.</summary>
    private double[] Step(double[] volts, double step)
    {
        var whole = Back(volts, step);
        var halves = Back(Back(volts, step / 2), step / 2);
        return [.. halves.Zip(whole, (h, w) => (2 * h) - w)];
    }

    /// <summary>(R C + step) next = R C now.</summary>
    private double[] Back(double[] volts, double step)
    {
        var n = volts.Length;
        var m = new double[n, n + 1];
        for (var r = 0; r < n; r++)
        {
            for (var c = 0; c < n; c++)
            {
                m[r, c] = ohms[r, c] * farads[c];
                m[r, n] += m[r, c] * volts[c];
            }

            m[r, r] += step;
        }

        return Solve(m, n);
    }

    private static double[] Solve(double[,] m, int n)
    {
        for (var k = 0; k < n; k++)
        {
            for (var r = k + 1; r < n; r++)
            {
                var factor = m[r, k] / m[k, k];
                for (var c = k; c <= n && factor != 0; c++)
                {
                    m[r, c] -= factor * m[k, c];
                }
            }
        }

        var x = new double[n];
        for (var r = n - 1; r >= 0; r--)
        {
            x[r] = m[r, n];
            for (var c = r + 1; c < n; c++)
            {
                x[r] -= m[r, c] * x[c];
            }

            x[r] /= m[r, r];
        }

        return x;
    }
}
