using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Slowglow.Browser.Tests.Browsing;

public sealed class LooksTests(Chromium chromium)
{
    private static readonly string Pictures = Path.Combine(AppContext.BaseDirectory, "pictures");

    [Theory]
    [InlineData(1440, ColorScheme.Light)]
    [InlineData(1440, ColorScheme.Dark)]
    [InlineData(820, ColorScheme.Light)]
    [InlineData(820, ColorScheme.Dark)]
    public async Task Pages_fit_their_width_in_both_colour_schemes(int width, ColorScheme scheme)
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync(width, scheme);
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.SettledAsync();
        await LookAsync(person, $"bench-{width}-{scheme}");
        foreach (var page in new[] { "jobs", "settings", "board", "stock", "book-in", "looking-back", "sums", "job/1001/papers" })
        {
            await person.GoAsync($"{bench.Url}/{page}");
            await LookAsync(person, $"{page.Replace('/', '-')}-{width}-{scheme}");
        }
    }

    [Theory]
    [InlineData("", ColorScheme.Light)]
    [InlineData("", ColorScheme.Dark)]
    [InlineData("/jobs", ColorScheme.Light)]
    [InlineData("/settings", ColorScheme.Light)]
    [InlineData("/board", ColorScheme.Light)]
    [InlineData("/stock", ColorScheme.Light)]
    [InlineData("/looking-back", ColorScheme.Dark)]
    [InlineData("/book-in", ColorScheme.Dark)]
    [InlineData("/job/1001/papers", ColorScheme.Light)]
    [InlineData("/job/1001/papers", ColorScheme.Dark)]
    [InlineData("/practice", ColorScheme.Light)]
    [InlineData("/sums", ColorScheme.Dark)]
    [InlineData("/job/9999", ColorScheme.Light)]
    [InlineData("/no-such-page", ColorScheme.Light)]
    public async Task Page_is_free_of_accessibility_faults(string path, ColorScheme scheme)
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync(scheme: scheme);
        var person = await BenchPerson.AtAsync(someone, bench.Url + path);
        if (path.Length == 0)
        {
            await person.SettledAsync();
            await person.TypeAsync("nonsense");
            await Assertions.Expect(person.Said).ToContainTextAsync("Wrong");
        }

        var found = await person.Page.RunAxe();

        Assert.Empty(
            found.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(4).Select(n => n.Html))}")
        );
    }

    [Fact]
    public async Task Nothing_is_fetched_from_outside()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        List<string> asked = [];
        List<string> refused = [];
        someone.Request += (_, request) => asked.Add(request.Url);
        someone.Console += (_, message) => refused.AddRange(message.Type == "error" ? [message.Text] : []);

        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.SettledAsync();

        Assert.All(asked, url => Assert.StartsWith(bench.Url, url, StringComparison.Ordinal));
        Assert.Empty(refused);
    }

    internal static async Task LookAsync(BenchPerson person, string name)
    {
        await person.Page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, name + ".png"), FullPage = true });
        var over = await person.Page.EvaluateAsync<int>(
            "() => document.documentElement.scrollWidth - document.documentElement.clientWidth"
        );
        Assert.True(over <= 0, $"{name} is {over} pixels wider than the screen");
    }
}
