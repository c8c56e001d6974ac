using Microsoft.Playwright;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>
/// Makes docs/bench-page.png anew, from the demo job as a newcomer finds it:
/// <c>dotnet run -c Release --project tests/Slowglow.Browser.Tests -- -explicit only</c>.
/// </summary>
public sealed class ReadmePicture(Chromium chromium)
{
    private const int Height = 1500;

    [Fact(Explicit = true)]
    public async Task Picture_of_the_bench_page_shows_the_demo_combo()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.SettledAsync();

        await person.Page.ScreenshotAsync(
            new()
            {
                Path = Path.Combine(DocsFolder(), "bench-page.png"),
                FullPage = true,
                Clip = new()
                {
                    X = 0,
                    Y = 0,
                    Width = 1440,
                    Height = Height,
                },
            }
        );

        Assert.True(File.Exists(Path.Combine(DocsFolder(), "bench-page.png")));
    }

    private static string DocsFolder()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(at.FullName, "Slowglow.slnx")))
        {
            at = at.Parent!;
        }

        return Path.Combine(at.FullName, "docs");
    }
}
