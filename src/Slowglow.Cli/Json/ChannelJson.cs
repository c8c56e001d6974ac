using Slowglow.Bench.Questions;

namespace Slowglow.Cli.Json;

/// <summary>One channel: volts rms at 1 kHz, watts, volts DC for the offset.</summary>
internal sealed record ChannelJson(
    string Channel,
    double Input,
    double Level,
    double Clean,
    double CleanInput,
    double CleanWatts,
    double Hum,
    double Offset,
    IReadOnlyList<StageJson> Stages
)
{
    public static ChannelJson From(ChannelLevels c) =>
        new(
            c.Channel,
            c.InputVolts,
            c.LevelVolts,
            c.CleanVolts,
            c.CleanInputVolts,
            c.CleanWatts,
            c.HumVolts,
            c.OffsetVolts,
            [.. c.Stages.Select(s => new StageJson(s.Where, s.Volts, s.Gain))]
        );
}
