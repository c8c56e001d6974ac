using Slowglow.Circuits;

namespace Slowglow.Cli.Json;

/// <summary>The most worrying feedback loop: gains in decibels, margins in degrees and decibels.</summary>
internal sealed record LoopJson(
    string Part,
    string Element,
    double Gain,
    double ReturnDifference,
    double Crossover,
    double PhaseMargin,
    double GainMargin,
    bool Latches,
    bool BestCase
)
{
    public static LoopJson? From(StabilityMargin? m) =>
        m is null
            ? null
            : new(
                m.Part,
                m.Element,
                m.LoopGainDecibels,
                m.SmallestReturnDifference,
                m.CrossoverHertz,
                m.PhaseMarginDegrees,
                m.GainMarginDecibels,
                m.Latches,
                m.IsBestCase
            );
}
