namespace Slowglow.Cli.Json;

/// <summary>A line of the form; <c>measured</c> and <c>passes</c> are null until something was entered.</summary>
internal sealed record RewindCheckJson(
    string What,
    double Expected,
    double Low,
    double High,
    string Unit,
    double Measured,
    bool? Passes
);
