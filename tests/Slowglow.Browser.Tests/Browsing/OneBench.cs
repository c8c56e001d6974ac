namespace Slowglow.Browser.Tests.Browsing;

/// <summary>One bench with the demo jobs for all tests of a class that only look at it.</summary>
public sealed class OneBench : IAsyncLifetime
{
    private BenchUnderTest? bench;

    public string Url => bench!.Url;

    public async ValueTask InitializeAsync() => bench = await BenchUnderTest.StartAsync();

    public ValueTask DisposeAsync() => bench?.DisposeAsync() ?? ValueTask.CompletedTask;
}
