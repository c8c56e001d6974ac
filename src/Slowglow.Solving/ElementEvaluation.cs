using System.Runtime.Intrinsics;

namespace Slowglow.Solving;

/// <summary>Currents of one element over a wave of voltages.</summary>
public static class ElementEvaluation
{
    /// <summary>
    /// Currents into every terminal but the reference for each of <paramref name="steps"/> points; <paramref name="volts"/> and the
    /// result are [step * ports + port].
    /// </summary>
    public static double[] Currents(Law law, ReadOnlySpan<double> constants, ReadOnlySpan<double> volts, int steps)
    {
        var ports = law.Ports;
        var lanesOfConstants = new Lane[law.Constants];
        for (var c = 0; c < law.Constants; c++)
        {
            lanesOfConstants[c] = Lanes.All(constants[c]);
        }

        var u = new Lane[ports];
        var i = new Lane[ports];
        var g = new Lane[ports * ports];
        var result = new double[steps * ports];
        for (var first = 0; first < steps; first += Lanes.Width)
        {
            for (var p = 0; p < ports; p++)
            {
                for (var lane = 0; lane < Lanes.Width; lane++)
                {
                    Lanes.Put(ref u[p], lane, volts[(Math.Min(first + lane, steps - 1) * ports) + p]);
                }
            }

            law.Evaluate(u, lanesOfConstants, i, g);
            for (var lane = 0; lane < Lanes.Width && first + lane < steps; lane++)
            {
                for (var p = 0; p < ports; p++)
                {
                    result[((first + lane) * ports) + p] = Lanes.Get(in i[p], lane);
                }
            }
        }

        return result;
    }
}
