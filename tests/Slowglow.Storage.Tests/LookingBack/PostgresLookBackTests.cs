namespace Slowglow.Storage.Tests.LookingBack;

public sealed class PostgresLookBackTests(PostgresServer server) : LookBackContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await PostgresUnderTest.StartAsync(server);
}
