namespace Slowglow.Storage.Tests.Writing;

public sealed class SqliteSheetVersionTests : SheetVersionContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await SqliteUnderTest.StartAsync();
}
