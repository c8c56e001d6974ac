namespace Slowglow.Cli.Json;

/// <summary>Files that an export wrote.</summary>
internal sealed record ExportJson(IReadOnlyList<string> Files);
