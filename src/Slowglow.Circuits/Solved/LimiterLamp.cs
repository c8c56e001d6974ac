namespace Slowglow.Circuits.Solved;

/// <summary>A tungsten lamp in the mains lead. Its resistance follows its own rms volts.</summary>
internal static class LimiterLamp
{
    /// <summary>Ohms of a lamp of those rated watts and volts with <paramref name="volts"/> rms across it.</summary>
    public static double Ohms(double watts, double ratedVolts, double volts) =>
        new TungstenLamp(watts, ratedVolts).Ohms(Math.Max(volts, 0));
}
