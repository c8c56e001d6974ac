namespace Slowglow.Circuits.Models.Valve;

/// <summary>
/// What a heater's volts leave of a cathode's emission. An oxide cathode could give far more than the anode takes, so that little changes
/// until the volts are a third down; then what it can give falls below what is asked, by Richardson's law (Dushman's form, Reviews of
/// Modern Physics 2, 1930; work function of oxide 1.1 eV, 1,050 K and thirtyfold reserve when hot: from memory, no page opened).
/// </summary>
internal static class CathodeWarmth
{
    /// <summary>Work function over Boltzmann's constant, kelvin.</summary>
    private const double WorkKelvin = 1.1 / 8.617e-5;
    private const double HotKelvin = 1050;

    /// <summary>Temperature goes with the fourth root of power, and a heater's power with the 1.6th power of its volts.</summary>
    private const double KelvinExponent = 0.4;

    /// <summary>Emission at rated heat over the current at work.</summary>
    private const double Reserve = 30;

    /// <summary>Above this share of the rated volts nothing is said to change: a rail within its tolerance is a rail.</summary>
    private const double Enough = 0.9;

    /// <summary>Fraction of the current left, 0 to 1, with a heater at that share of its rated volts rms.</summary>
    public static double Of(double share) => share >= Enough ? 1 : Left(share) / Left(Enough);

    private static double Left(double share)
    {
        var kelvin = HotKelvin * Math.Pow(Math.Max(share, 1e-3), KelvinExponent);
        var square = kelvin / HotKelvin * (kelvin / HotKelvin);
        var emission = Reserve * square * Math.Exp(WorkKelvin * ((1 / HotKelvin) - (1 / kelvin)));
        return 1 / (1 + (1 / Math.Max(emission, 1e-9)));
    }
}
