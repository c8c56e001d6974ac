namespace Slowglow.Cli.Json;

/// <summary>How a limiter lamp does with the unit; shares of its rated watts and light.</summary>
internal sealed record LampJson(
    double Watts,
    double HealthyWatts,
    double HealthyLight,
    double ShortedWatts,
    double ShortedLight,
    double RailLeft,
    bool Suits
);
