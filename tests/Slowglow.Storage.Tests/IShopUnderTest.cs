using Microsoft.EntityFrameworkCore;

namespace Slowglow.Storage.Tests;

/// <summary>An empty shop in one kind of database, made for one test and gone after it.</summary>
public interface IShopUnderTest : IAsyncDisposable
{
    IDbContextFactory<ShopDatabase> Shop { get; }

    /// <summary>The same records as a program sees them that was started anew.</summary>
    IDbContextFactory<ShopDatabase> Reopened();
}
