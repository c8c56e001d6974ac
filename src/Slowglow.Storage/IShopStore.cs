using Microsoft.EntityFrameworkCore;

namespace Slowglow.Storage;

/// <summary>Where the shop's records are kept: one kind of database or another.</summary>
public interface IShopStore : IDbContextFactory<ShopDatabase>
{
    /// <summary>Makes it, or brings an older one up to this program.</summary>
    Task PrepareAsync(CancellationToken cancel = default);
}
