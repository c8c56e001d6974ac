using Microsoft.Playwright;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>What a technician does where a sheet is typed.</summary>
internal sealed class SheetPerson(IPage page)
{
    /// <summary>The first job of the demo is being solved meanwhile, on every core.</summary>
    private const int BusyMilliseconds = 30_000;

    static SheetPerson() => Assertions.SetDefaultExpectTimeout(BusyMilliseconds);

    public IPage Page => page;

    public ILocator Text => page.Locator(".cm-content");

    public ILocator Kept => page.Locator("[data-said=kept]");

    public ILocator Told => page.Locator("[data-said=told]");

    public ILocator Problems => page.Locator(".sheet-problems li");

    public static async Task<SheetPerson> AtAsync(IBrowserContext browser, string url, int job = 1001)
    {
        var person = new SheetPerson(await browser.NewPageAsync());
        await person.Page.GotoAsync($"{url}/job/{job}/sheet");
        await person.ReadyAsync();
        return person;
    }

    public Task ReadyAsync() => page.Locator(".sheet-desk[data-open=true]").WaitForAsync();

    /// <summary>Types a line above what is there already: the editor draws only what is in sight.</summary>
    public async Task TypeAboveAsync(string text)
    {
        await Text.ClickAsync();
        await page.Keyboard.PressAsync("Control+Home");
        await page.Keyboard.TypeAsync(text + "\n");
    }
}
