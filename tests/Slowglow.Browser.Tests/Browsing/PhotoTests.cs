using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>Photographs at the counter and later.</summary>
public sealed class PhotoTests(Chromium chromium)
{
    private const int FortyMegabytes = 40_000_000;
    private static readonly string Pictures = Path.Combine(AppContext.BaseDirectory, "pictures");

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Photographs_are_taken_at_the_counter_and_later_and_what_is_none_gets_a_sentence()
    {
        await using var bench = await BenchUnderTest.StartAsync([]);
        await using var someone = await chromium.SomeoneAsync();
        var counter = await CounterPerson.AtAsync(someone, bench.Url + "/book-in");
        var page = counter.Page;
        // A real picture: what the browser itself drew.
        var real = await page.ScreenshotAsync(new() { Type = ScreenshotType.Jpeg });
        await counter.FillAsync(("in-name", "Ada Fenwick"), ("in-model", "Tern 2"), ("in-complaint", "smells burnt"));
        var picker = page.Locator("#in-photos");
        var folder = Directory.CreateTempSubdirectory("slowglow-photos-").FullName;
        var huge = new byte[FortyMegabytes];
        real.CopyTo(huge, 0);
        string[] files =
        [
            Path.Combine(folder, "front.jpg"),
            Path.Combine(folder, "huge.jpg"),
            Path.Combine(folder, "invoice.jpg"),
        ];
        await File.WriteAllBytesAsync(files[0], real, Cancel);
        await File.WriteAllBytesAsync(files[1], huge, Cancel);
        await File.WriteAllTextAsync(files[2], "%PDF-1.7 not a picture", Cancel);
        await picker.SetInputFilesAsync(files);

        var said = page.Locator(".findings");
        await Expect(said).ToContainTextAsync("\"huge.jpg\" has 40 MB, too much for a photograph.");
        await Expect(said).ToContainTextAsync("\"invoice.jpg\" is not a photograph, whatever its name says.");
        await Expect(page.Locator("#in-complaint")).ToHaveValueAsync("smells burnt");
        await page.GetByLabel("What front.jpg shows").FillAsync("as it came");
        await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, "photos-in-1440.png"), FullPage = true });
        await page.GetByRole(AriaRole.Button, new() { Name = "Book it in" }).ClickAsync();
        await Expect(counter.State).ToHaveTextAsync("booked in");

        var images = counter.Card("photos").Locator("img");
        await Expect(images).ToHaveCountAsync(1);
        await Expect(images.First).ToHaveAttributeAsync("alt", "as it came");
        await page.Locator("#photos-camera").SetInputFilesAsync(files[0]);
        await counter.PressAsync("photos", "Store the photograph");
        await Expect(images).ToHaveCountAsync(2);
        await page.WaitForFunctionAsync(
            "() => [...document.querySelectorAll('.photos img')].every(i => i.complete && i.naturalWidth === 1440)"
        );
        await counter.SaysAsync("as it came");
        await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, "photos-1440.png"), FullPage = true });
        await page.SetViewportSizeAsync(820, 900);
        await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, "photos-820.png"), FullPage = true });
        Directory.Delete(folder, recursive: true);
    }
}
