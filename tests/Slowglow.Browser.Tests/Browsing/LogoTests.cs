using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>The shop's logo, chosen in the settings.</summary>
public sealed class LogoTests(Chromium chromium)
{
    private static readonly string Pictures = Path.Combine(AppContext.BaseDirectory, "pictures");

    [Fact]
    public async Task Logo_is_taken_shown_and_taken_away_and_what_is_none_gets_a_sentence()
    {
        await using var bench = await BenchUnderTest.StartAsync([]);
        await using var someone = await chromium.SomeoneAsync();
        var counter = await CounterPerson.AtAsync(someone, bench.Url + "/settings");
        var page = counter.Page;
        var picker = page.Locator("#rule-logo");
        await counter.FillAsync(("rule-name", "Bellwether Yard"));
        await picker.SetInputFilesAsync(File("list.png", "solder, 500 g"u8.ToArray()));
        await Expect(page.Locator(".findings")).ToContainTextAsync("\"list.png\" is not a photograph, whatever its name says.");
        // On disk: handed over as bytes it would travel through the browser's wire first.
        var poster = Path.Combine(Directory.CreateTempSubdirectory("slowglow-logo-").FullName, "poster.jpg");
        await using (var huge = System.IO.File.Create(poster))
        {
            huge.SetLength(40_000_000);
        }

        await picker.SetInputFilesAsync(poster);
        Directory.Delete(Path.GetDirectoryName(poster)!, recursive: true);
        await Expect(page.Locator(".findings")).ToContainTextAsync("\"poster.jpg\" has 40 MB");

        var mark = await page.ScreenshotAsync(
            new()
            {
                Clip = new() { Width = 420, Height = 120 },
            }
        );
        await picker.SetInputFilesAsync(File("mark.png", mark));
        await Expect(page.Locator("img.logo")).ToBeVisibleAsync();
        await Expect(page.Locator("#rule-name")).ToHaveValueAsync("Bellwether Yard");
        await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, "logo-1440.png"), FullPage = true });
        await page.GetByRole(AriaRole.Button, new() { Name = "Settle it" }).ClickAsync();
        await Expect(page.GetByText("Papers issued before keep what they say.")).ToBeVisibleAsync();
        await page.ReloadAsync();
        await Expect(page.Locator("img.logo")).ToBeVisibleAsync();
        await page.Locator("[data-interactive=true]").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await page.GetByRole(AriaRole.Button, new() { Name = "Take the logo away" }).ClickAsync();
        await Expect(page.Locator("img.logo")).ToHaveCountAsync(0);
    }

    private static FilePayload File(string name, byte[] content) =>
        new()
        {
            Name = name,
            MimeType = "image/png",
            Buffer = content,
        };
}
