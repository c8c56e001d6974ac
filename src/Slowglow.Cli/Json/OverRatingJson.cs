namespace Slowglow.Cli.Json;

/// <summary>A part over its rating: unit W, V or A.</summary>
internal sealed record OverRatingJson(string Part, string Unit, double Value, double Ratio);
