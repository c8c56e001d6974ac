using Slowglow.Cli.Desk;
using Slowglow.Power.Limiter;
using Slowglow.Power.PowerUp;

namespace Slowglow.Cli.Json;

/// <summary>How to bring a unit up.</summary>
internal sealed record PowerUpJson(
    LampJson Lamp,
    IReadOnlyList<LampJson> Lamps,
    IReadOnlyList<PowerStepJson> Steps,
    IReadOnlyList<RailAliveJson> Regulated,
    IReadOnlyList<string> Reforming,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<FindingJson> Findings
)
{
    public static PowerUpJson From(PowerUpPlan p, IReadOnlyList<DocumentFinding> findings) =>
        new(
            Of(p.Lamp),
            [.. p.Lamps.Select(Of)],
            [.. p.Steps.Select(PowerStepJson.From)],
            [.. p.Regulated.Select(r => new RailAliveJson(r.Rail, r.Volts, r.MainsVolts))],
            p.Reforming,
            Power.Cautions.Always,
            [.. findings.Select(FindingJson.From)]
        );

    private static LampJson Of(LampChoice l) =>
        new(l.Watts, l.HealthyShare, l.HealthyLight, l.ShortShare, l.ShortLight, l.RailShare, l.Suits);
}
