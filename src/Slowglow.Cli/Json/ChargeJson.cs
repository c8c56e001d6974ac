using Slowglow.Power.Energy;

namespace Slowglow.Cli.Json;

/// <summary>A reservoir after switch-off; a time is null when it is longer than a month.</summary>
internal sealed record ChargeJson(
    string Capacitor,
    double Volts,
    double Joules,
    double SecondsTo60,
    double SecondsTo35,
    string? Without,
    double SecondsWithout,
    double ToolOhms,
    double ToolWatts,
    double ToolSeconds,
    bool Caution
)
{
    public static ChargeJson From(StoredCharge c) =>
        new(
            c.Capacitor,
            c.Volts,
            c.Joules,
            c.SecondsTo60,
            c.SecondsTo35,
            c.Discharger,
            c.SecondsWithout,
            c.Tool?.Ohms ?? double.NaN,
            c.Tool?.RatedWatts ?? double.NaN,
            c.Tool?.Seconds ?? double.NaN,
            c.CallsForCaution
        );
}
