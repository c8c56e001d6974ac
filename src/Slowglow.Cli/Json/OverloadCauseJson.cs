namespace Slowglow.Cli.Json;

/// <summary>A fault that overloads the part; <c>seconds</c> is null when it stands it, or nothing can be said.</summary>
internal sealed record OverloadCauseJson(
    string Part,
    string Fault,
    string What,
    string Unit,
    double Value,
    double Healthy,
    double Ratio,
    double Seconds,
    string? ClearedBy
);
