namespace Slowglow.Storage;

/// <summary>Copies of a whole shop in one file.</summary>
public interface IShopCopies
{
    /// <summary>Writes a copy as of one moment while others read and write, checks it, and says what is in it.</summary>
    /// <exception cref="CopyFailedException">It could not be made, or is not whole.</exception>
    Task<RowCounts> WriteAsync(string path, CancellationToken cancel = default);

    /// <summary>Puts a copy in the place of the shop, after checking it; what stood there is kept beside it.</summary>
    /// <exception cref="CopyFailedException">The file is no whole copy.</exception>
    Task<RowCounts> ReadAsync(string path, CancellationToken cancel = default);
}
