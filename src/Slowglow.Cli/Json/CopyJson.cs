namespace Slowglow.Cli.Json;

/// <summary>A backup, and what is in it.</summary>
internal sealed record CopyJson(string File, long Bytes, int Customers, int Jobs, int Entries, int Papers, int Photos);
