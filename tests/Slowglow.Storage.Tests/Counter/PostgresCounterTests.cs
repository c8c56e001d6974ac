namespace Slowglow.Storage.Tests.Counter;

public sealed class PostgresCounterTests(PostgresServer server) : CounterContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await PostgresUnderTest.StartAsync(server);
}
