namespace Slowglow.Cli.Json;

/// <summary>Level at a net of the path; gain against the net before it, null for the first.</summary>
internal sealed record StageJson(string Where, double Level, double Gain);
