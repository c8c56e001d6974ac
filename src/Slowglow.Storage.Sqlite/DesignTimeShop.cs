using Microsoft.EntityFrameworkCore.Design;

namespace Slowglow.Storage.Sqlite;

/// <summary>Lets the migration tool see the model.</summary>
internal sealed class DesignTimeShop : IDesignTimeDbContextFactory<ShopDatabase>
{
    public ShopDatabase CreateDbContext(string[] args) => new SqliteShop("design-time.db").CreateDbContext();
}
