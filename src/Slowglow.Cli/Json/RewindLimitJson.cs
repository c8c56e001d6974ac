namespace Slowglow.Cli.Json;

/// <summary>A limit of a design.</summary>
internal sealed record RewindLimitJson(string What, double Value, double Most, string Unit, bool Holds);
