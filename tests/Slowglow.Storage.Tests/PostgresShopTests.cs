namespace Slowglow.Storage.Tests;

public sealed class PostgresShopTests(PostgresServer server) : ShopContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await PostgresUnderTest.StartAsync(server);
}
