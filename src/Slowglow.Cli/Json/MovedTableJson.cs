namespace Slowglow.Cli.Json;

/// <summary>A table of the shop with its rows.</summary>
internal sealed record MovedTableJson(string Table, long Rows);
