using Slowglow.Bench.Rehearsals;

namespace Slowglow.Cli.Json;

/// <summary>Units with one fault. Shares and probabilities 0 to 1; null without cases.</summary>
internal sealed record RehearsedSinglesJson(
    int Cases,
    double First,
    double FirstThree,
    double Alone,
    double Group,
    double Certain,
    double CertainAndRight,
    double Readings,
    double Minutes,
    double CalibrationError,
    double CalibrationErrorAtEnd,
    IReadOnlyList<ReliabilityBin> Reliability
)
{
    public static RehearsedSinglesJson From(RehearsalReport r) =>
        new(
            r.Singles.Count,
            r.First,
            r.FirstThree,
            r.Alone,
            r.Group,
            r.Certain,
            r.CertainAndRight,
            r.Readings,
            r.Minutes,
            r.OnTheWay.ExpectedError,
            r.AtTheEnd.ExpectedError,
            r.OnTheWay.Bins
        );
}
