namespace Slowglow.Storage.Tests.Counter;

public sealed class SqliteSearchTests : SearchContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await SqliteUnderTest.StartAsync();
}
