using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>Pages as they look, on a bench that nothing is changed on.</summary>
public sealed class LooksTests(Chromium chromium, OneBench bench) : IClassFixture<OneBench>
{
    private const int Laptop = 1440;
    private const int Tablet = 820;
    private static readonly string Pictures = Path.Combine(AppContext.BaseDirectory, "pictures");

    private static (int Width, ColorScheme Scheme)[] Ways =>
        [(Laptop, ColorScheme.Light), (Laptop, ColorScheme.Dark), (Tablet, ColorScheme.Dark), (Tablet, ColorScheme.Light)];

    [Fact]
    public async Task Pages_fit_their_width_in_both_colour_schemes()
    {
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.SettledAsync();
        await LookEveryWayAsync(person.Page, "bench");
        foreach (var page in new[] { "jobs", "settings", "board", "stock", "book-in", "looking-back", "sums", "job/1001/papers" })
        {
            await person.GoAsync($"{bench.Url}/{page}");
            await LookEveryWayAsync(person.Page, page.Replace('/', '-'));
        }
    }

    // One person for all pages of a scheme: most of the time goes into starting a browser that has seen nothing yet.
    [Theory]
    [InlineData(ColorScheme.Light, "/jobs /settings /board /stock /job/1001/papers /practice /job/9999 /no-such-page")]
    [InlineData(ColorScheme.Dark, "/looking-back /book-in /job/1001/papers /sums")]
    public async Task Pages_are_free_of_accessibility_faults(ColorScheme scheme, string paths)
    {
        await using var someone = await chromium.SomeoneAsync(scheme: scheme);
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.SettledAsync();
        await person.TypeAsync("nonsense");
        await Assertions.Expect(person.Said).ToContainTextAsync("Wrong");
        await AskAxeAsync(person.Page, "the bench");

        foreach (var path in paths.Split(' '))
        {
            await person.GoAsync(bench.Url + path);
            await AskAxeAsync(person.Page, path);
        }
    }

    [Fact]
    public async Task Nothing_is_fetched_from_outside()
    {
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

    internal static Task LookAsync(BenchPerson person, string name) => LookAsync(person.Page, name);

    /// <summary>Laptop and tablet, light and dark; accessibility, when asked, once in each scheme and at each width.</summary>
    internal static async Task LookEveryWayAsync(IPage page, string name, bool isAxeAsked = false)
    {
        foreach (var (width, scheme) in Ways)
        {
            await page.SetViewportSizeAsync(width, 900);
            await page.EmulateMediaAsync(new() { ColorScheme = scheme });
            var way = $"{name}-{width}-{scheme}";
            await LookAsync(page, way);
            if (isAxeAsked && (width == Laptop) == (scheme == ColorScheme.Light))
            {
                await AskAxeAsync(page, way);
            }
        }
    }

    private static async Task LookAsync(IPage page, string name)
    {
        await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, name + ".png"), FullPage = true });
        var over = await page.EvaluateAsync<int>(
            "() => document.documentElement.scrollWidth - document.documentElement.clientWidth"
        );
        Assert.True(over <= 0, $"{name} is {over} pixels wider than the screen");
    }

    private static async Task AskAxeAsync(IPage page, string name)
    {
        var found = await page.RunAxe();
        Assert.Empty(
            found.Violations.Select(v => $"{name}: {v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(4).Select(n => n.Html))}")
        );
    }
}
