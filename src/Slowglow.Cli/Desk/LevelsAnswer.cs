using Slowglow.Bench.Questions;
using Slowglow.Circuits;
using Slowglow.Sheets.Setups;

namespace Slowglow.Cli.Desk;

/// <summary>Levels as asked for; what is healthy is null when no fault was given.</summary>
internal sealed record LevelsAnswer(
    Setup Setup,
    IReadOnlyList<Fault> Faults,
    IReadOnlyList<ChannelLevels> Channels,
    IReadOnlyList<ChannelLevels>? Healthy,
    IReadOnlyList<ChannelCharacter> Characters,
    IReadOnlyList<ChannelCharacter>? HealthyCharacters,
    UnitConcerns Concerns
)
{
    /// <summary>The difference the faults make, channel by channel.</summary>
    public IReadOnlyList<string> Words =>
        Healthy is null ? [] : [.. Healthy.Zip(Channels).SelectMany(c => LevelWords.Compare(c.First, c.Second))];
}
