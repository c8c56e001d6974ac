using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>What is offered while a sheet is typed, and which keys take it.</summary>
public sealed class CompletionTests(Chromium chromium)
{
    private const string Begun = "sheet: 1\nunit: Tern 2\nparts:\n  V1: 12AX7\n  R1: 100k 1W HT -> V1.1\n  R2: 1M IN -> GND\n";

    [Fact]
    public async Task Part_is_typed_from_what_fits_its_number_free_pins_and_nets_in_use()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var (page, text) = await BegunAsync(bench, someone);

        await page.Keyboard.TypeAsync("R");
        await OffersFirstAsync(page, "R3", "resistor");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.TypeAsync("1k5 ");
        await page.Keyboard.TypeAsync("V");
        await OffersFirstAsync(page, "V1", "12AX7");
        await page.Keyboard.PressAsync("Tab");
        await OffersFirstAsync(page, "2", "g, free");
        await Expect(Option(page, "1")).ToContainTextAsync("a, in use");
        await page.Keyboard.PressAsync("Tab");
        await OffersFirstAsync(page, "GND", "net");
        await Expect(Option(page, "IN")).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("Tab");

        await Expect(text).ToContainTextAsync("R3: 1k5 V1.2 -> GND");
    }

    /// <summary>The reader's answers come late here: to a line half typed, and to none after it.</summary>
    [Fact]
    public async Task Name_half_typed_is_no_net_and_a_pin_taken_a_moment_ago_is_not_free()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var (page, _) = await BegunAsync(bench, someone);

        await page.RunAndWaitForResponseAsync(
            () => page.Keyboard.TypeAsync("R3: 1k5 IN>v"),
            r => r.Request.PostData?.EndsWith("v\"}", StringComparison.Ordinal) == true
        );
        await page.RouteAsync("**/sheet/read", route => route.AbortAsync());
        await page.Keyboard.PressAsync("Backspace");
        await page.Keyboard.TypeAsync("v");
        await OffersFirstAsync(page, "V1", "12AX7");
        await page.Keyboard.PressAsync("Tab");
        await OffersFirstAsync(page, "2", "g, free");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.TypeAsync("R4: 1k5 IN>V1.");
        await OffersFirstAsync(page, "3", "k, free");
        await Expect(Option(page, "2")).ToContainTextAsync("g, in use");
    }

    [Fact]
    public async Task Kinds_and_type_numbers_fit_the_letter_of_the_designator()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var (page, text) = await BegunAsync(bench, someone);

        await page.Keyboard.TypeAsync("V2: EL8");
        await OffersFirstAsync(page, "EL84", "pentode");
        await Expect(page.Locator(".cm-completionLabel", new() { HasText = "BC" })).ToHaveCountAsync(0);
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.TypeAsync("VR1: p");
        await OffersFirstAsync(page, "pot", "pot");
        await page.Keyboard.PressAsync("Escape");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.TypeAsync("Q1: BC10");
        await OffersFirstAsync(page, "BC107", "bjt");

        await Expect(text).ToContainTextAsync("V2: EL84");
    }

    [Fact]
    public async Task Enter_leaves_a_new_name_alone_and_takes_only_what_the_arrows_chose()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var (page, text) = await BegunAsync(bench, someone);

        await page.Keyboard.TypeAsync("R3: 10k IN>H");
        await OffersFirstAsync(page, "HT", "net");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.TypeAsync("R4: 10k IN>H");
        await OffersFirstAsync(page, "H", "net");
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("ArrowDown");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.PressAsync("Enter");
        await page.Keyboard.TypeAsync("# end");

        await Expect(text.Locator(".cm-line", new() { HasTextRegex = new("R3: 10k IN -> H$") })).ToHaveCountAsync(1);
        await Expect(text.Locator(".cm-line", new() { HasTextRegex = new("R4: 10k IN -> HT$") })).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task Channel_is_copied_with_new_numbers_and_what_both_use_stays()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var (page, text) = await BegunAsync(bench, someone);
        await page.Keyboard.TypeAsync(
            "R3: 220k MIX>GND\n# channel 1\nJ1: jack IN1\nR4: 1M IN1>GND\nC1: 22n 400V IN1>MIX\nR5: 1k TOP1>HT"
        );

        await page.Keyboard.PressAsync("Alt+c");

        foreach (
            var line in new[]
            {
                "# channel 2",
                "J2: jack IN2",
                "R6: 1M IN2 -> GND",
                "C2: 22n 400V IN2 -> MIX",
                "R7: 1k TOP2 -> HT",
            }
        )
        {
            await Expect(text.Locator(".cm-line", new() { HasTextString = line })).ToHaveCountAsync(1);
        }
    }

    private static async Task<(IPage Page, ILocator Text)> BegunAsync(BenchUnderTest bench, IBrowserContext someone)
    {
        var person = await SheetPerson.AtAsync(someone, bench.Url);
        await person.Text.ClickAsync();
        await person.Page.Keyboard.PressAsync("Control+a");
        // Nobody types on before the sheet put in has been read: what is offered comes from that.
        await person.Page.RunAndWaitForResponseAsync(
            async () =>
            {
                await person.Page.Keyboard.InsertTextAsync(Begun);
                await person.Page.Keyboard.TypeAsync("  ");
            },
            r =>
                r.Url.EndsWith("/read", StringComparison.Ordinal)
                && r.Request.PostData is { } sent
                && sent.EndsWith("  \"}", StringComparison.Ordinal)
        );
        return (person.Page, person.Text);
    }

    private static async Task OffersFirstAsync(IPage page, string label, string detail)
    {
        var first = page.Locator(".cm-tooltip-autocomplete li").First;
        await Expect(first.Locator(".cm-completionLabel")).ToHaveTextAsync(label);
        await Expect(first.Locator(".cm-completionDetail")).ToContainTextAsync(detail);
    }

    private static ILocator Option(IPage page, string label) =>
        page.Locator(
            ".cm-tooltip-autocomplete li",
            new() { Has = page.Locator(".cm-completionLabel", new() { HasTextRegex = new($"^{label}$") }) }
        );
}
