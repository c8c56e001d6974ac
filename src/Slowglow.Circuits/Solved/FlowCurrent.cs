using System.Numerics;

namespace Slowglow.Circuits.Solved;

/// <summary>The periodic current through a resistance and an inductance in series.</summary>
internal static class FlowCurrent
{
    /// <summary>Amperes at every step: every harmonic of the volts over r + j w L.</summary>
    /// <param name="volts">Over one cycle.</param>
    /// <param name="hertz">Cycles a second.</param>
    public static double[] Of(double[] volts, double ohms, double henries, double hertz)
    {
        var n = volts.Length;
        var amps = new double[n];
        for (var h = 0; h <= n / 2; h++)
        {
            Complex harmonic = 0;
            for (var k = 0; k < n; k++)
            {
                harmonic += volts[k] * Complex.FromPolarCoordinates(1.0 / n, -2 * Math.PI * h * k / n);
            }

            var current = harmonic / new Complex(ohms, 2 * Math.PI * h * hertz * henries);
            var share = h == 0 || 2 * h == n ? 1 : 2;
            for (var k = 0; k < n; k++)
            {
                amps[k] += share * (current * Complex.FromPolarCoordinates(1, 2 * Math.PI * h * k / n)).Real;
            }
        }

        return amps;
    }
}
