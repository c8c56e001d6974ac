namespace Slowglow.Storage.Tests.Logo;

public sealed class SqliteLogoTests : LogoContract
{
    protected override async Task<IShopUnderTest> StartAsync() => await SqliteUnderTest.StartAsync();
}
