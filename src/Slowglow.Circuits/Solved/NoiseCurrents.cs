using Slowglow.Circuits.Models.Diode;
using Slowglow.Circuits.Models.OpAmp;
using Slowglow.Circuits.Models.Transistor;
using Slowglow.Circuits.Models.Valve;

namespace Slowglow.Circuits.Solved;

/// <summary>Spectral densities of the noise currents in elements, A^2/Hz, white.</summary>
internal static class NoiseCurrents
{
    /// <summary>4 k T at 300 K, joule.</summary>
    public const double FourKT = 4 * 1.380649e-23 * 300;
    private const double Charge = 1.602177e-19;

    /// <summary>Input noise of an op-amp whose device file has no "en", V per root hertz: field-effect inputs (common practice, no source).</summary>
    private const double FetInputVolts = 18e-9;

    /// <summary>The same for bipolar inputs.</summary>
    private const double BipolarInputVolts = 8e-9;

    /// <summary>Bias currents below this are those of field-effect inputs.</summary>
    private const double FetBiasAmps = 2e-9;

    /// <summary>Noise current into each port of an element, against its reference.</summary>
    public static IEnumerable<(int Port, double Density)> Of(ElementAtRest e) =>
        e.Element.Law switch
        {
            // Equivalent grid resistance 2.5 / gm: Harris, RCA Review 5, 1941.
            TriodeLaw => [(0, FourKT * 2.5 * Math.Max(e.Slope(0, 1), 0)), (1, Shot(e.Amps[1]))],
            PentodeLaw => Pentode(e),
            DiodeLaw => [(0, Shot(e.Amps[0]) + (4 * Charge * e.Constant((int)DiodeLaw.Constant.SaturationAmps)))],
            BjtLaw => [(0, Shot(e.Amps[0])), (1, Shot(e.Amps[1]))],

            // Channel noise: two thirds of the thermal noise of gm (van der Ziel, Proceedings of the IRE 50, 1962, from memory).
            FieldEffectLaw => [(0, FourKT * Math.Abs(e.Slope(0, 1)) * 2 / 3), (1, Shot(e.Amps[1]))],
            OpAmpLaw => [(0, Shot(e.Amps[0])), (1, Shot(e.Amps[1]))],
            _ => [],
        };

    /// <summary>Space-charge noise and the partition of the current: 2.5 (Ia / Ik) (1 + 8 Ig2 / gm) / gm at the grid (Spangenberg, Vacuum Tubes, 1948, quoted by others).</summary>
    private static IEnumerable<(int, double)> Pentode(ElementAtRest e)
    {
        var gm = e.Slope(0, 1);
        var cathode = e.Amps[0] + e.Amps[2];
        if (!(gm > 0) || !(cathode > 0))
        {
            return [];
        }

        var ohms = 2.5 * e.Amps[0] / cathode * (1 + (8 * e.Amps[2] / gm)) / gm;
        return [(0, FourKT * ohms * gm * gm), (1, Shot(e.Amps[1]))];
    }

    private static double Shot(double amps) => 2 * Charge * Math.Abs(amps);

    /// <summary>Noise volts between the inputs of an op-amp, V^2/Hz.</summary>
    /// <param name="stated">The device file's own figure, V per root hertz; null when it has none.</param>
    public static double OpAmpInput(ElementAtRest e, double? stated)
    {
        var bias = Math.Abs(e.Constant((int)OpAmpLaw.Constant.BiasAmps));
        var volts = stated ?? (bias < FetBiasAmps ? FetInputVolts : BipolarInputVolts);
        return volts * volts;
    }
}
