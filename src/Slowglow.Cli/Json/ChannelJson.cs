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
    IReadOnlyList<StageJson> Stages,
    ResponseJson? Response,
    IReadOnlyList<ImpedanceJson> InputImpedance,
    IReadOnlyList<ImpedanceJson> OutputImpedance,
    IReadOnlyList<HarmonicsJson> Harmonics,
    IReadOnlyList<ClipJson> ClipsFirst,
    SlewJson? FullOutput,
    HumJson? HumCauses,
    NoiseJson? Noise,
    LoopJson? Loop
)
{
    public static ChannelJson From(ChannelLevels c, ChannelCharacter more) =>
        new(
            c.Channel,
            c.InputVolts,
            c.LevelVolts,
            c.CleanVolts,
            c.CleanInputVolts,
            c.CleanWatts,
            c.HumVolts,
            c.OffsetVolts,
            [.. c.Stages.Select(s => new StageJson(s.Where, s.Volts, s.Gain))],
            ResponseJson.From(more.Response),
            [.. more.Input.Select(ImpedanceJson.From)],
            [.. more.Output.Select(ImpedanceJson.From)],
            [.. more.Harmonics.Select(HarmonicsJson.From)],
            [.. more.ClipsFirst.Select(ClipJson.From)],
            SlewJson.From(more.Slews),
            HumJson.From(more.Hum),
            NoiseJson.From(more.Noise),
            LoopJson.From(more.Loop)
        );
}
