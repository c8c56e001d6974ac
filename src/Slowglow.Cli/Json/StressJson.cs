using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;

namespace Slowglow.Cli.Json;

/// <summary>What every part stands at the worst.</summary>
internal sealed record StressJson(
    IReadOnlyList<StressRowJson> Parts,
    IReadOnlyList<string> Unsettled,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<FindingJson> Findings
)
{
    public static StressJson From(UnitStress stress, IReadOnlyList<DocumentFinding> findings) =>
        new(
            [.. stress.Rows.Select(StressRowJson.From)],
            stress.Unsettled,
            Power.Cautions.Always,
            [.. findings.Select(FindingJson.From)]
        );
}
