using Slowglow.Cli.Desk;
using Slowglow.Power.Energy;

namespace Slowglow.Cli.Json;

/// <summary>What the reservoirs hold after switch-off.</summary>
internal sealed record DischargeJson(
    IReadOnlyList<ChargeJson> Reservoirs,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<FindingJson> Findings
)
{
    public static DischargeJson From(IReadOnlyList<StoredCharge> charges, IReadOnlyList<DocumentFinding> findings) =>
        new([.. charges.Select(ChargeJson.From)], Power.Cautions.Always, [.. findings.Select(FindingJson.From)]);
}
