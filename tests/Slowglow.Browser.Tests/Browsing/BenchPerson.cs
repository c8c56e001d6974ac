using System.Diagnostics;
using Microsoft.Playwright;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>What a technician does at the page.</summary>
internal sealed class BenchPerson(IPage page)
{
    /// <summary>Solving a demo sheet from cold on a slow machine.</summary>
    private const int SolvingMilliseconds = 240_000;

    public IPage Page => page;

    public ILocator Line => page.Locator("#reading");

    public ILocator Said => page.Locator("#reading-said");

    public ILocator Suspects => page.Locator(".suspects > .suspect");

    public static async Task<BenchPerson> AtAsync(IBrowserContext browser, string url)
    {
        var person = new BenchPerson(await browser.NewPageAsync());
        await person.GoAsync(url);
        return person;
    }

    public async Task GoAsync(string url)
    {
        await page.GotoAsync(url);
        await ReadyAsync();
    }

    /// <summary>Waits until the page can be used: what is clicked before that is lost.</summary>
    public Task ReadyAsync() =>
        page.Locator("[data-interactive=true]").WaitForAsync(new() { State = WaitForSelectorState.Attached });

    /// <summary>Waits until nothing is being worked out and something has been.</summary>
    public async Task SettledAsync()
    {
        await Assertions
            .Expect(page.Locator(".workstrip[data-working=false]"))
            .ToBeVisibleAsync(new() { Timeout = SolvingMilliseconds });
        await Assertions
            .Expect(page.Locator(".workstrip"))
            .ToContainTextAsync("Weighed", new() { Timeout = SolvingMilliseconds });
    }

    /// <summary>Does something that changes the evidence, and waits until the suspects have been weighed with it.</summary>
    /// <returns>Milliseconds from what is done to the suspects on the page.</returns>
    public async Task<double> WeighedAnewAsync(Func<Task> what)
    {
        var before = await page.Locator("[data-weighed]").GetAttributeAsync("data-weighed");
        var clock = Stopwatch.StartNew();
        await what();
        await page.WaitForFunctionAsync(
            "before => { const e = document.querySelector('[data-weighed]'); return e && e.dataset.weighed !== before; }",
            before,
            new() { Timeout = SolvingMilliseconds, PollingInterval = 10 }
        );
        var took = clock.Elapsed.TotalMilliseconds;
        await SettledAsync();
        return took;
    }

    public async Task TypeAsync(string line)
    {
        await Line.FillAsync("");
        await Line.PressSequentiallyAsync(line);
        await Line.PressAsync("Enter");
    }

    public ILocator Point(string where) => page.Locator($".measured [data-point='{where}']");

    public async Task<IReadOnlyList<string>> RankingAsync() =>
        await page.Locator(".suspect")
            .EvaluateAllAsync<string[]>(
                "all => all.map(s => s.querySelector('h3').innerText + ' ' + s.querySelector('.chance').innerText)"
            );
}
