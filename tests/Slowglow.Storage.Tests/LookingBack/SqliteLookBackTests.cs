namespace Slowglow.Storage.Tests.LookingBack;

public sealed class SqliteLookBackTests : LookBackContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await SqliteUnderTest.StartAsync();
}
