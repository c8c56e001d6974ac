using Slowglow.Circuits;

namespace Slowglow.Trials;

/// <summary>How one hidden fault went.</summary>
/// <param name="Rank">Place of the suspect (or inseparable group) that holds the true part, from 1.</param>
/// <param name="First">Part of the first suspect.</param>
/// <param name="FirstGroup">Parts in the first suspect's group.</param>
internal sealed record TrialResult(
    IReadOnlyList<Fault> Hidden,
    string Complaint,
    int Rank,
    string First,
    double FirstProbability,
    int FirstGroup,
    double None,
    int Readings,
    double Minutes,
    double WorstUpdateMilliseconds,
    IReadOnlyList<string> Story
);
