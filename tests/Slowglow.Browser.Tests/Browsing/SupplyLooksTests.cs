using Microsoft.Playwright;

namespace Slowglow.Browser.Tests.Browsing;

public sealed class SupplyLooksTests(Chromium chromium)
{
    private static readonly string Pictures = Path.Combine(AppContext.BaseDirectory, "pictures");
    private static readonly string[] All =
    [
        "power-up?lamp=60W&step=3",
        "stored-energy",
        "stress",
        "root-cause?part=T1",
        "rewinding",
        "offers",
    ];

    [Fact]
    public async Task Pages_fit_their_width_and_are_free_of_accessibility_faults()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SupplyPerson.AtAsync(someone, bench.Url, All[0]);
        foreach (var page in All)
        {
            await person.GoAsync(page);
            await LooksTests.LookEveryWayAsync(person.Page, page.Split('?')[0], isAxeAsked: true);
        }
    }

    [Fact]
    public async Task Every_page_and_the_printout_carry_the_cautions()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SupplyPerson.AtAsync(someone, bench.Url, All[0]);
        foreach (var page in All)
        {
            await person.GoAsync(page);
            foreach (var caution in Slowglow.Power.Cautions.Always)
            {
                await Assertions.Expect(person.Page.Locator("aside.cautions").First).ToContainTextAsync(caution);
            }
        }
    }

    [Fact]
    public async Task The_specification_prints_on_one_page_with_its_cautions_and_without_the_forms()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SupplyPerson.AtAsync(someone, bench.Url, "rewinding");
        await person.Page.EmulateMediaAsync(new() { Media = Media.Print });

        await Assertions.Expect(person.Page.Locator(".winder-sheet .cautions")).ToBeVisibleAsync();
        await Assertions.Expect(person.Page.Locator(".rewind-wishes")).ToBeHiddenAsync();
        await Assertions.Expect(person.Page.Locator(".wound-form")).ToBeHiddenAsync();
        await person.Page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, "winder-print.png"), FullPage = true });
        var pdf = await person.Page.PdfAsync(new() { PreferCSSPageSize = true, Path = Path.Combine(Pictures, "winder.pdf") });
        var text = System.Text.Encoding.Latin1.GetString(pdf);
        Assert.Equal(1, System.Text.RegularExpressions.Regex.Count(text, @"/Type\s*/Page\b(?!s)"));
    }
}
