using Slowglow.Circuits;

namespace Slowglow.Bench.Questions;

/// <summary>What a channel does beyond its level. Empty and null where the world gives no figure.</summary>
/// <param name="Channel">Name of the signal path.</param>
/// <param name="Response">5 Hz to 100 kHz (20 kHz where there are valves), against 1 kHz.</param>
/// <param name="Input">Impedance at the input at 100 Hz, 1 kHz and 10 kHz.</param>
/// <param name="Output">The same at the output, load and loudspeaker taken off.</param>
/// <param name="Harmonics">At the sheet's level, at half the clean limit and at the clean limit.</param>
/// <param name="ClipsFirst">What ends the clean range, in order.</param>
/// <param name="Slews">Where the clean output ends for want of slew rate; null where no op-amp does.</param>
/// <param name="Hum">By cause.</param>
/// <param name="Noise">20 Hz to 20 kHz.</param>
/// <param name="Loop">The most worrying feedback loop; null without one.</param>
public sealed record ChannelCharacter(
    string Channel,
    FrequencyResponse? Response,
    IReadOnlyList<ImpedancePoint> Input,
    IReadOnlyList<ImpedancePoint> Output,
    IReadOnlyList<HarmonicContent> Harmonics,
    IReadOnlyList<ClippingCause> ClipsFirst,
    SlewLimit? Slews,
    HumSplit? Hum,
    NoiseFloor? Noise,
    StabilityMargin? Loop
);
