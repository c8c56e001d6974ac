namespace Slowglow.Power.Energy;

/// <summary>Below which a terminal is taken as safe to touch (reference/accessible_voltage_limits.csv, IEC 60065 family).</summary>
public static class SafeVolts
{
    /// <summary>Direct volts.</summary>
    public const double Dc = 60;

    /// <summary>The stricter figure, volts.</summary>
    public const double Low = 35;

    /// <summary>Longer than this calls for a caution, seconds.</summary>
    public const double MostSeconds = 2;
}
