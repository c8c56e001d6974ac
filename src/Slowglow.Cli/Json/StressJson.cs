using Slowglow.Cli.Desk;
using Slowglow.Power.Stress;

namespace Slowglow.Cli.Json;

/// <summary>What every part stands at the worst.</summary>
internal sealed record StressJson(
    IReadOnlyList<StressRowJson> Parts,
    IReadOnlyList<string> Unsettled,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<FindingJson> Findings
)
{
    public static StressJson From(
        IReadOnlyList<StressRow> rows,
        IReadOnlyList<string> unsettled,
        IReadOnlyList<DocumentFinding> findings
    ) => new([.. rows.Select(StressRowJson.From)], unsettled, Power.Cautions.Always, [.. findings.Select(FindingJson.From)]);
}
