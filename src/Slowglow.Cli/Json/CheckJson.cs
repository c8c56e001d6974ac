using Slowglow.Bench.Questions;
using Slowglow.Cli.Desk;
using Slowglow.Sheets;

namespace Slowglow.Cli.Json;

/// <summary>What a sheet amounts to, and everything there is to say about it.</summary>
internal sealed record CheckJson(
    string? Unit,
    string? Maker,
    int Parts,
    int Nets,
    IReadOnlyList<string> Channels,
    int Faults,
    IReadOnlyList<Assumption> Assumptions,
    IReadOnlyList<FindingJson> Findings
)
{
    public static CheckJson From(SheetCheck check, string document) =>
        new(
            check.Unit,
            check.Maker,
            check.Parts,
            check.Nets,
            check.Channels,
            check.Faults,
            check.Assumptions,
            [.. check.Findings.Select(f => FindingJson.From(new(document, f)))]
        );
}
