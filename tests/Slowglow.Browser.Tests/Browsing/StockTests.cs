using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>Parts: needed, out of a bin, ordered, come in pieces.</summary>
public sealed class StockTests(Chromium chromium)
{
    private static readonly string Pictures = Path.Combine(AppContext.BaseDirectory, "pictures");

    [Fact]
    public async Task Part_is_needed_taken_from_a_bin_put_back_ordered_and_comes_in_two_deliveries()
    {
        await using var bench = await BenchUnderTest.StartAsync([]);
        await using var someone = await chromium.SomeoneAsync();
        var counter = await CounterPerson.AtAsync(someone, bench.Url + "/stock");
        var page = counter.Page;
        await counter.FillAsync(("bin-part", "EL84"), ("bin-name", "A3"), ("bin-pieces", "1"), ("bin-cost", "-11.50"));
        await counter.FillAsync(("bin-least", "2"), ("bin-equivalents", "6BQ5"));
        await counter.PressAsync("newbin", "Put it there");
        await Expect(counter.Card("newbin")).ToContainTextAsync("The cost of a piece cannot be that.");
        await Expect(page.Locator("#bin-part")).ToHaveValueAsync("EL84");
        await Expect(page.Locator("#bin-cost")).ToHaveValueAsync("-11.50");
        await counter.FillAsync(("bin-cost", "11.50"));
        await counter.PressAsync("newbin", "Put it there");
        await Expect(page.Locator("table.ledger tbody tr")).ToContainTextAsync("short");

        await counter.GoAsync(bench.Url + "/book-in");
        await counter.FillAsync(("in-name", "Ada Fenwick"), ("in-model", "Tern 2"), ("in-complaint", "red glow"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Book it in" }).ClickAsync();
        var parts = counter.Card("parts");
        await counter.FillAsync(("need-part", "EL84"), ("need-pieces", "2"), ("need-why", "V3 and V4 red"));
        await counter.PressAsync("parts", "Needed");
        await Expect(parts).ToContainTextAsync("not ordered yet");
        await counter.FillAsync(("shelf-find", "6bq5"));
        await counter.PressAsync("parts", "Look");
        await counter.PressAsync("parts", "Fit one EL84");
        await Expect(parts).ToContainTextAsync("1 x EL84, 17.25 EUR each, from bin A3");
        await Expect(parts).ToContainTextAsync("bin A3: 0 there");
        await counter.PressAsync("parts", "Put EL84 back");
        await counter.SaysAsync("not needed");

        await counter.PressAsync("parts", "Order it");
        await Expect(page.Locator("#order-pieces")).ToHaveValueAsync("2");
        await counter.FillAsync(("order-supplier", "Invented Valves"), ("order-price", "9"));
        await counter.PressAsync("parts", "Ordered");
        await Expect(parts).ToContainTextAsync("on its way");
        await page.GetByLabel("Pieces that came: EL84").FillAsync("1");
        await counter.PressAsync("parts", "So many came");
        await Expect(parts).ToContainTextAsync("1 of 2 here: EL84");
        await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, "parts-1440.png"), FullPage = true });
        await counter.GoAsync(bench.Url + "/stock");
        await Expect(counter.Card("waiting")).ToContainTextAsync("1 x EL84 from Invented Valves, no day promised");
        await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, "stock-1440.png"), FullPage = true });
        await page.SetViewportSizeAsync(820, 900);
        await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, "stock-820.png"), FullPage = true });
        await counter.GoAsync(bench.Url + "/board");
        await Expect(page.Locator(".board")).ToContainTextAsync("needs 1 x EL84 from Invented Valves");
    }
}
