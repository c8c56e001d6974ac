namespace Slowglow.Cli.Json;

/// <summary>A flash test.</summary>
internal sealed record RewindFlashJson(string Between, double Volts, double Seconds, string Source);
