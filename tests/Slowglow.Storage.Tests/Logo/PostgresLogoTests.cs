namespace Slowglow.Storage.Tests.Logo;

public sealed class PostgresLogoTests(PostgresServer server) : LogoContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await PostgresUnderTest.StartAsync(server);
}
