namespace Slowglow.Storage.Tests.Photographs;

public sealed class PostgresPhotoTests(PostgresServer server) : PhotoContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await PostgresUnderTest.StartAsync(server);
}
