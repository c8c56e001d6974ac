using Slowglow.Power.PowerUp;

namespace Slowglow.Cli.Json;

/// <summary>One step; <c>mains</c> is null with the power off, <c>limiter</c> without a lamp.</summary>
internal sealed record PowerStepJson(
    string Title,
    string Do,
    double Mains,
    double Limiter,
    bool PowerOff,
    bool ValvesOut,
    IReadOnlyList<PowerPointJson> Points,
    double LampWatts,
    double LampLight,
    double StopAmps,
    IReadOnlyList<PowerSignJson> Signs
)
{
    public static PowerStepJson From(PowerUpStep s) =>
        new(
            s.Title,
            s.Do,
            s.Setup.MainsVolts ?? double.NaN,
            s.Setup.LimiterWatts ?? double.NaN,
            s.Setup.PowerOff,
            s.Setup.ValvesOut,
            [.. s.Points.Select(p => new PowerPointJson(p.Probe.Where, p.Probe.KindText, p.Nominal, p.Low, p.High, p.Unit))],
            s.LampShare,
            s.LampLight,
            s.StopAmps,
            [.. s.Signs.Select(g => new PowerSignJson(g.Looks, g.Suspects))]
        );
}
