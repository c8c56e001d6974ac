namespace Slowglow.Storage.Tests.Stock;

public sealed class SqliteStockTests : StockContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await SqliteUnderTest.StartAsync();
}
