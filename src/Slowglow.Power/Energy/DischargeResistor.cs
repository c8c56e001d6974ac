using Slowglow.Quantities;

namespace Slowglow.Power.Energy;

/// <summary>A resistor to discharge a reservoir with.</summary>
/// <param name="Ohms">Of the E12 series.</param>
/// <param name="CrestWatts">At the first instant.</param>
/// <param name="RatedWatts">Rating to use.</param>
/// <param name="Seconds">Until the volts are below 60 V.</param>
public sealed record DischargeResistor(double Ohms, double CrestWatts, double RatedWatts, double Seconds)
{
    /// <summary>Time it may take, and no more than a tenth of an ampere through the clips (common practice, no source).</summary>
    private const double WantedSeconds = 2;
    private const double MostAmps = 0.1;

    /// <summary>A wirewound resistor takes five times its watts for a few seconds (common practice, no source).</summary>
    private const double ShortOverload = 5;

    /// <summary>R = t / (C ln(V0 / Vt)), as in reference/discharge_resistors.csv.</summary>
    public static double LargestOhms(double volts, double farads, double target, double seconds) =>
        seconds / (farads * Math.Log(volts / target));

    /// <summary>One for a reservoir; null when it holds less than 60 V.</summary>
    public static DischargeResistor? For(double volts, double farads)
    {
        if (!(volts > SafeVolts.Dc))
        {
            return null;
        }

        var largest = LargestOhms(volts, farads, SafeVolts.Dc, WantedSeconds);
        var ohms = StandardSizes.E12AtMost(Math.Max(largest, 1.2 * volts / MostAmps));
        var crest = volts * volts / ohms;
        return new(ohms, crest, StandardSizes.WattsFor(crest / ShortOverload), ohms * farads * Math.Log(volts / SafeVolts.Dc));
    }
}
