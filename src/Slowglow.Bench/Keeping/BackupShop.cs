using Slowglow.Bench.Jobs;
using Slowglow.Sheets;
using Slowglow.Storage;

namespace Slowglow.Bench.Keeping;

/// <summary>Writes a copy of everything into one file, while the shop is in use, and reads it again to be sure.</summary>
public sealed class BackupShop(IShopCopies copies)
{
    /// <param name="path">File to write; one that is there already is not overwritten.</param>
    public async Task<Parsed<ShopCopy>> RunAsync(string path, CancellationToken cancel = default)
    {
        var full = Path.GetFullPath(path);
        if (File.Exists(full) || Directory.Exists(full))
        {
            return new(null, Said.Wrong($"{full} is there already.", "Another name: a backup overwrites nothing."));
        }

        var part = full + ".part";
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(full)!);
            var counts = await copies.WriteAsync(part, cancel);
            File.Move(part, full);
            return new(new(full, new FileInfo(full).Length, counts), []);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or CopyFailedException)
        {
            if (File.Exists(part))
            {
                File.Delete(part);
            }

            return new(
                null,
                Said.Wrong($"The backup could not be written to {full}.", "A folder that may be written to, on a disk with room.")
            );
        }
    }
}
