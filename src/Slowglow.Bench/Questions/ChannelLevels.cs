namespace Slowglow.Bench.Questions;

/// <summary>How a channel passes a signal in a world. NaN where the world gives no figure.</summary>
/// <param name="InputVolts">The sheet's generator level, open circuit, volts rms.</param>
/// <param name="LevelVolts">At the output, volts rms at 1 kHz for the sheet's input level.</param>
/// <param name="CleanVolts">Largest output below 5 % distortion, volts rms.</param>
/// <param name="CleanInputVolts">Generator level that gives it, volts rms.</param>
/// <param name="CleanWatts">The same into the load; NaN without a load.</param>
/// <param name="HumVolts">At the output without signal, volts rms.</param>
/// <param name="OffsetVolts">DC at the output.</param>
/// <param name="Stages">Level along the path, net by net.</param>
public sealed record ChannelLevels(
    string Channel,
    double InputVolts,
    double LevelVolts,
    double CleanVolts,
    double CleanInputVolts,
    double CleanWatts,
    double HumVolts,
    double OffsetVolts,
    IReadOnlyList<StageLevel> Stages
);
