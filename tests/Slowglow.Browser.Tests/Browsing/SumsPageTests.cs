using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

public sealed class SumsPageTests(Chromium chromium)
{
    [Fact]
    public async Task Sum_is_worked_again_at_each_change_and_says_what_is_wrong()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url + "/sums");
        var stage = person.Page.Locator("#valve-stage");
        await Expect(stage.Locator("dl")).ToContainTextAsync("gain at 1 kHz", new() { Timeout = 60_000 });
        await Expect(stage.Locator("svg.loadline .curve").First).ToBeVisibleAsync();
        var before = await stage.Locator("dl").InnerTextAsync();

        await stage.GetByLabel("Anode resistor").FillAsync("220k");
        await stage.GetByLabel("Anode resistor").PressAsync("Enter");
        await Expect(stage.Locator("dl")).Not.ToHaveTextAsync(before);

        await stage.GetByLabel("Anode resistor").FillAsync("banana");
        await stage.GetByLabel("Anode resistor").PressAsync("Enter");
        await Expect(stage).ToContainTextAsync("\"banana\" is not a figure");
        await Expect(stage.GetByLabel("Anode resistor")).ToHaveValueAsync("banana");
    }
}
