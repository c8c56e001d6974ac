namespace Slowglow.Storage.Tests.People;

public sealed class SqlitePeopleTests : PeopleContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await SqliteUnderTest.StartAsync();
}
