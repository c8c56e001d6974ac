namespace Slowglow.Power.Energy;

/// <summary>What a reservoir holds after switch-off, and for how long.</summary>
/// <param name="Capacitor">Designator.</param>
/// <param name="Volts">When the unit is switched off, at the most.</param>
/// <param name="Joules">Stored in it.</param>
/// <param name="SecondsTo60">Until it is below 60 V; 0 when it never is above, infinite beyond a month.</param>
/// <param name="SecondsTo35">The same to 35 V.</param>
/// <param name="Discharger">The resistor without which it takes longest; null when none makes a difference.</param>
/// <param name="SecondsWithout">To 60 V (35 V where it holds less than 60 V) with that one open.</param>
/// <param name="Tool">A resistor to discharge it with; null below 60 V.</param>
public sealed record StoredCharge(
    string Capacitor,
    double Volts,
    double Joules,
    double SecondsTo60,
    double SecondsTo35,
    string? Discharger,
    double SecondsWithout,
    DischargeResistor? Tool
)
{
    /// <summary>True when hands must wait.</summary>
    public bool CallsForCaution =>
        SecondsTo60 > SafeVolts.MostSeconds || SecondsTo35 > SafeVolts.MostSeconds || SecondsWithout > SafeVolts.MostSeconds;
}
