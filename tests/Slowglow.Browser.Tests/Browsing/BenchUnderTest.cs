using Microsoft.AspNetCore.Builder;
using Microsoft.Data.Sqlite;
using Slowglow.Bench.Jobs;
using Slowglow.Web.Hosting;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>A bench page with the demo jobs, in a folder of its own that is gone afterwards.</summary>
internal sealed class BenchUnderTest : IAsyncDisposable
{
    // Solved once for all tests: what they are about is the page.
    private static readonly BenchUnits Units = new();
    private readonly string folder = Directory.CreateTempSubdirectory("slowglow-bench-").FullName;
    private WebApplication? app;

    private BenchUnderTest() { }

    public string Url { get; private set; } = "http://127.0.0.1:0";

    public string DatabasePath => Path.Combine(folder, "shop.db");

    public IServiceProvider Services => app!.Services;

    public static async Task<BenchUnderTest> StartAsync(IReadOnlyList<string>? demoFolders = null)
    {
        var made = new BenchUnderTest();
        await made.ServeAsync(demoFolders);
        return made;
    }

    public async Task StopAsync()
    {
        await app!.StopAsync(TestContext.Current.CancellationToken);
        await app.DisposeAsync();
        app = null;
    }

    /// <summary>The same file and address again.</summary>
    public Task ServeAgainAsync() => ServeAsync(null);

    public async ValueTask DisposeAsync()
    {
        if (app is not null)
        {
            await StopAsync();
        }

        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    private async Task ServeAsync(IReadOnlyList<string>? demoFolders)
    {
        var options = new BenchOptions
        {
            Url = Url,
            DatabasePath = DatabasePath,
            DemoFolders = demoFolders,
            Units = Units,
        };
        var started = await BenchHost.StartAsync(options, TestContext.Current.CancellationToken);
        Assert.Empty(started.Findings);
        app = started.Value!;
        Url = app.Urls.First();
    }
}
