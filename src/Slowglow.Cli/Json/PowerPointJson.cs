namespace Slowglow.Cli.Json;

/// <summary>What a point should read in a step; null where nothing certain can be said, or a meter shows overload.</summary>
internal sealed record PowerPointJson(string Where, string Kind, double Nominal, double Low, double High, string Unit);
