namespace Slowglow.Bench.Rehearsals;

/// <summary>How a closed list of faults was told apart.</summary>
/// <param name="Tried">Faulty units.</param>
/// <param name="Detected">Share of them in which some reading lay three standard deviations from a healthy unit's, 0 to 1.</param>
/// <param name="Isolated">Share of them where the true part came first among the parts of the list, 0 to 1.</param>
/// <param name="Group">Mean number of parts of the list in the first suspect, where that was right.</param>
/// <param name="Readings">Mean readings taken.</param>
/// <param name="FalseAlarms">Share of healthy units called faulty, 0 to 1.</param>
/// <param name="Missed">What was not isolated, with how often.</param>
public sealed record IsolationReport(
    int Tried,
    double Detected,
    double Isolated,
    double Group,
    double Readings,
    double FalseAlarms,
    IReadOnlyList<(string Words, int Times)> Missed
);
