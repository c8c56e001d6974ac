namespace Slowglow.Cli.Json;

/// <summary>Where the page answers and where its jobs are kept.</summary>
internal sealed record BenchJson(string Url, string Data);
