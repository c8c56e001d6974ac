namespace Slowglow.Storage;

/// <summary>A table that was carried over, every row read again on both sides and found the same.</summary>
public sealed record MovedTable(string Table, long Rows);
