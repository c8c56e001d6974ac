namespace Slowglow.Storage.Tests.Stock;

public sealed class PostgresStockTests(PostgresServer server) : StockContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await PostgresUnderTest.StartAsync(server);
}
