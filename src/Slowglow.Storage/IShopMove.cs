namespace Slowglow.Storage;

/// <summary>Carries a whole shop over into a database of another kind.</summary>
public interface IShopMove
{
    /// <summary>
    /// Copies every row of every table as of one moment, reads both sides again and compares them, and only then lets the copy stand. Nobody can write
    /// into the old shop meanwhile.
    /// </summary>
    /// <exception cref="CopyFailedException">It could not be copied, or is not the same; then the new database is as empty as before.</exception>
    Task<IReadOnlyList<MovedTable>> RunAsync(ShopDatabase from, CancellationToken cancel = default);
}
