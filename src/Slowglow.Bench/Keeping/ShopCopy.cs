using Slowglow.Storage;

namespace Slowglow.Bench.Keeping;

/// <summary>A backup that was written and read again.</summary>
public sealed record ShopCopy(string Path, long Bytes, RowCounts Rows);
