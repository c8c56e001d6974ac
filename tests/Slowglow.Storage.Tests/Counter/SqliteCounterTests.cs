namespace Slowglow.Storage.Tests.Counter;

public sealed class SqliteCounterTests : CounterContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await SqliteUnderTest.StartAsync();
}
