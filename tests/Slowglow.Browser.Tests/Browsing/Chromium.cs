using Microsoft.Playwright;

// One bench at a time: solving already takes every core there is.
[assembly: Xunit.v3.Parallelization(Mode = Xunit.Sdk.ParallelMode.None)]
[assembly: AssemblyFixture(typeof(Slowglow.Browser.Tests.Browsing.Chromium))]

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>One browser for all tests: Debian's chromium.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private IPlaywright? playwright;
    private IBrowser? browser;

    private static string Path => Environment.GetEnvironmentVariable("SLOWGLOW_CHROMIUM") ?? "/usr/bin/chromium";

    public async ValueTask InitializeAsync()
    {
        playwright = await Playwright.CreateAsync();
        browser = await playwright.Chromium.LaunchAsync(
            new() { ExecutablePath = Path, Args = ["--no-sandbox", "--disable-gpu"] }
        );
    }

    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
    }

    /// <summary>A person with a screen of that width, wanting light or dark.</summary>
    public Task<IBrowserContext> SomeoneAsync(int width = 1440, ColorScheme scheme = ColorScheme.Light) =>
        browser!.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = width, Height = 900 },
                ColorScheme = scheme,
            }
        );
}
