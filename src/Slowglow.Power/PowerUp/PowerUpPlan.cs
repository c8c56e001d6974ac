using Slowglow.Power.Limiter;

namespace Slowglow.Power.PowerUp;

/// <summary>How to bring a unit up.</summary>
/// <param name="Lamp">The lamp used, and how it does.</param>
/// <param name="Lamps">All that were weighed.</param>
/// <param name="Steps">In order.</param>
/// <param name="Regulated">When each regulated rail comes alive.</param>
/// <param name="Reforming">How to wake electrolytics that have stood for years, in sentences; empty where there is no high tension.</param>
public sealed record PowerUpPlan(
    LampChoice Lamp,
    IReadOnlyList<LampChoice> Lamps,
    IReadOnlyList<PowerUpStep> Steps,
    IReadOnlyList<RailAlive> Regulated,
    IReadOnlyList<string> Reforming
);
