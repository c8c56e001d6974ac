namespace Slowglow.Storage.Tests.Writing;

public sealed class PostgresSheetVersionTests(PostgresServer server) : SheetVersionContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await PostgresUnderTest.StartAsync(server);
}
