namespace Slowglow.Storage.Tests.Counter;

public sealed class PostgresSearchTests(PostgresServer server) : SearchContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await PostgresUnderTest.StartAsync(server);
}
