namespace Slowglow.Cli.Json;

/// <summary>A point that moves.</summary>
internal sealed record MovedJson(
    string Where,
    string Kind,
    double Was,
    double Low,
    double High,
    double Now,
    string Unit,
    bool InBand
);
