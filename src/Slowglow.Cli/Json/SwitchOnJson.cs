namespace Slowglow.Cli.Json;

/// <summary>What switching on asks of a fuse, and what melts it, A²s.</summary>
internal sealed record SwitchOnJson(double SquareSeconds, double Melting, string Words);
