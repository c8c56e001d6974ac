using Slowglow.Bench.Rehearsals;
using Slowglow.Cli.Desk;

namespace Slowglow.Cli.Json;

/// <summary>The answer to a rehearsal.</summary>
internal sealed record RehearsalJson(
    string Unit,
    string By,
    string Draw,
    int Seed,
    double Certainty,
    RehearsedSinglesJson Singles,
    RehearsedOthersJson Doubles,
    RehearsedOthersJson WrongValues,
    RehearsedOthersJson Bridges,
    IReadOnlyList<RehearsedCaseJson> Cases,
    IReadOnlyList<FindingJson> Findings
)
{
    public static RehearsalJson From(string unit, RehearsalReport report, IReadOnlyList<DocumentFinding> findings) =>
        new(
            unit,
            report.Request.By.ToString().ToLowerInvariant(),
            report.Request.Draw.ToString().ToLowerInvariant(),
            report.Request.Seed,
            report.Request.Rules.Certainty,
            RehearsedSinglesJson.From(report),
            RehearsedOthersJson.From(report.Doubles),
            RehearsedOthersJson.From(report.WrongValues),
            RehearsedOthersJson.From(report.Bridges),
            [.. report.Cases.Select(RehearsedCaseJson.From)],
            [.. findings.Select(FindingJson.From)]
        );
}
