using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Storage;

namespace Slowglow.Bench.Keeping;

/// <summary>Puts a backup in the place of a shop's file. What stood there is kept beside it.</summary>
public sealed class RestoreShop(IShopCopies copies)
{
    /// <param name="backup">A file that <see cref="BackupShop"/> wrote.</param>
    public async Task<Parsed<ShopCopy>> RunAsync(string backup, CancellationToken cancel = default)
    {
        var full = Path.GetFullPath(backup);
        if (!File.Exists(full))
        {
            return new(null, Said.Wrong($"There is no file {full}.", "A file written by slowglow backup."));
        }

        try
        {
            var counts = await copies.ReadAsync(full, cancel);
            return new(new(full, new FileInfo(full).Length, counts), []);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or CopyFailedException)
        {
            return new(
                null,
                Said.Wrong(
                    $"{full} cannot be restored: {e.Message}",
                    "A whole file written by slowglow backup; stop the bench page first."
                )
            );
        }
    }
}
