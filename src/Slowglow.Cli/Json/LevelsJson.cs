using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Cli.Desk;
using Slowglow.Sheets.Setups;

namespace Slowglow.Cli.Json;

/// <summary>Levels of every channel; with faults also those of the healthy unit and the difference in words.</summary>
internal sealed record LevelsJson(
    object Setup,
    IReadOnlyList<string> Faults,
    IReadOnlyList<ChannelJson> Channels,
    IReadOnlyList<ChannelJson>? Healthy,
    IReadOnlyList<string>? Words,
    UnitJson Unit,
    IReadOnlyList<FindingJson> Findings
)
{
    public static LevelsJson From(LevelsAnswer answer, IReadOnlyList<DocumentFinding> findings, IReadOnlyList<Setup> known) =>
        new(
            SetupJson.From(answer.Setup, known),
            [.. answer.Faults.Select(FaultWords.Say)],
            [.. answer.Channels.Zip(answer.Characters, ChannelJson.From)],
            answer.Healthy is null ? null : [.. answer.Healthy.Zip(answer.HealthyCharacters!, ChannelJson.From)],
            answer.Healthy is null ? null : answer.Words,
            UnitJson.From(answer.Concerns),
            [.. findings.Select(FindingJson.From)]
        );
}
