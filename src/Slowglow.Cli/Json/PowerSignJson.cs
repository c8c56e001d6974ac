namespace Slowglow.Cli.Json;

/// <summary>A way for a step to go wrong, and the faults that look so.</summary>
internal sealed record PowerSignJson(string Looks, IReadOnlyList<string> Suspects);
