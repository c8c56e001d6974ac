namespace Slowglow.Circuits;

/// <summary>
/// A tungsten filament in heat balance: what it takes at its volts is what it radiates at its temperature. Resistivity after Jones and
/// Forsythe-Worthing, emissivity by their radiated power (reference/tungsten_filament.csv, tungsten_radiated_power.csv). Conduction by gas and
/// leads is left out, so that below a tenth of its rated volts a real lamp draws a little more.
/// </summary>
/// <param name="RatedWatts">&gt; 0. Lamps of one voltage side by side are one lamp of their watts together.</param>
/// <param name="RatedVolts">Rms, &gt; 0.</param>
public readonly record struct TungstenLamp(double RatedWatts, double RatedVolts)
{
    /// <summary>Filament of a general service lamp at its rated volts, kelvin.</summary>
    private const double RatedKelvin = 2800;
    private const double Room = 293;

    /// <summary>Light at 560 nm falls off with exp(-25690 K / T): Planck's second constant over the wavelength.</summary>
    private const double Planck = 25690;

    public double HotOhms => RatedVolts * RatedVolts / RatedWatts;

    /// <summary>At room temperature.</summary>
    public double ColdOhms => HotOhms * Resistivity(Room) / Resistivity(RatedKelvin);

    /// <summary>Ohms with so many volts rms across it, once it has settled.</summary>
    public double Ohms(double volts) => HotOhms * Resistivity(Kelvin(volts)) / Resistivity(RatedKelvin);

    /// <summary>Watts at so many volts rms.</summary>
    public double Watts(double volts) => volts * volts / Ohms(volts);

    /// <summary>Amperes rms at so many volts rms.</summary>
    public double Amps(double volts) => volts / Ohms(volts);

    /// <summary>Volts rms across it when so many amperes rms go through it.</summary>
    public double VoltsAt(double amps)
    {
        double low = 0,
            high = 3 * RatedVolts;
        for (var k = 0; k < 60; k++)
        {
            var middle = (low + high) / 2;
            (low, high) = Amps(middle) < amps ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>Light over that at rated volts.</summary>
    public double Light(double volts)
    {
        var kelvin = Kelvin(volts);
        return Math.Exp(-Planck * ((1 / kelvin) - (1 / RatedKelvin)));
    }

    /// <summary>Temperature of the filament at so many volts rms.</summary>
    public double Kelvin(double volts)
    {
        var share = Math.Pow(volts / RatedVolts, 2);
        double low = Room,
            high = 3650;
        for (var k = 0; k < 50; k++)
        {
            var middle = (low + high) / 2;
            var given = Radiated(middle) / Radiated(RatedKelvin);
            var taken = share * Resistivity(RatedKelvin) / Resistivity(middle);
            (low, high) = given < taken ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>Microhm centimetres; within 0.9 % of the table from 273 to 3655 K.</summary>
    internal static double Resistivity(double kelvin)
    {
        var t = kelvin / 1000;
        return -0.90545 + (t * (19.57056 + (t * (8.17101 + (t * (-2.34232 + (t * 0.292375)))))));
    }

    /// <summary>Relative to an arbitrary surface.</summary>
    private static double Radiated(double kelvin) => Emissivity(kelvin) * (Math.Pow(kelvin, 4) - Math.Pow(Room, 4));

    /// <summary>Total emissivity, through 0.106 at 1000 K, 0.265 at 2000 K and 0.337 at 2800 K.</summary>
    internal static double Emissivity(double kelvin) =>
        Math.Max(0.106 + (1.59e-4 * (kelvin - 1000)) - (3.83e-8 * (kelvin - 1000) * (kelvin - 2000)), 0.015);
}
