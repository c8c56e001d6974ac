namespace Slowglow.Storage.Tests.People;

public sealed class PostgresPeopleTests(PostgresServer server) : PeopleContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await PostgresUnderTest.StartAsync(server);
}
