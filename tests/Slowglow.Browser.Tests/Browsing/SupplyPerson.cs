using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>What a technician does at the pages about the supply of a job.</summary>
internal sealed class SupplyPerson(BenchPerson person, string url)
{
    /// <summary>A plan of a demo sheet from cold on a slow machine.</summary>
    private const int SolvingMilliseconds = 240_000;

    /// <summary>Job of the demo combo, which has valves.</summary>
    public const int Combo = 1001;

    public IPage Page => person.Page;

    public static async Task<SupplyPerson> AtAsync(IBrowserContext browser, string url, string page, int job = Combo)
    {
        var person = await BenchPerson.AtAsync(browser, $"{url}/job/{job}/{page}");
        var made = new SupplyPerson(person, url);
        await made.SettledAsync();
        return made;
    }

    public async Task GoAsync(string page, int job = Combo)
    {
        await person.GoAsync($"{url}/job/{job}/{page}");
        await SettledAsync();
    }

    /// <summary>Waits until nothing is being worked out, and something to see is there.</summary>
    public async Task SettledAsync()
    {
        await Expect(Page.Locator(".workstrip[data-working=false]")).ToBeAttachedAsync(new() { Timeout = SolvingMilliseconds });
        await Expect(Page.Locator("main .card").First).ToBeVisibleAsync();
    }

    public async Task SubmitAsync(string selector, string text)
    {
        await Page.Locator(selector).FillAsync(text);
        await Page.Locator(selector).PressAsync("Enter");
        await SettledAsync();
    }
}
