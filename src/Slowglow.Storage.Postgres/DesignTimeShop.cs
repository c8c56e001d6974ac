using Microsoft.EntityFrameworkCore.Design;

namespace Slowglow.Storage.Postgres;

/// <summary>Lets the migration tool see the model.</summary>
internal sealed class DesignTimeShop : IDesignTimeDbContextFactory<ShopDatabase>
{
    public ShopDatabase CreateDbContext(string[] args) => new PostgresShop("Host=nowhere;Database=design").CreateDbContext();
}
