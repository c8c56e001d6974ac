using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>Where a sheet comes from and goes to: files, other jobs, earlier versions.</summary>
public sealed class SheetVersionsTests(Chromium chromium)
{
    private const int SolvingMilliseconds = 120_000;
    private const string Filed = "sheet: 1\r\nunit: Tern 2\r\nparts:\r\n  R77: 4k7 IN -> GND\r\n  C9: 1u IN -> GND\r\n";

    [Fact]
    public async Task Two_versions_are_compared_part_by_part_and_point_by_point()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SheetPerson.AtAsync(someone, bench.Url);
        var text = await (await person.Page.APIRequest.GetAsync($"{bench.Url}/job/1001/sheet/text.yaml")).TextAsync();
        await FileAsync(person, text.Replace("R10:  100k", "R10:  330k", StringComparison.Ordinal));
        await person.Page.Keyboard.PressAsync("Control+s");
        await Expect(person.Kept).ToContainTextAsync("Saved as version 2");

        var card = person.Page.Locator("section[aria-labelledby=versions-title]");
        await card.GetByRole(AriaRole.Button, new() { Name = "Compare" }).ClickAsync();

        var part = card.Locator("tr", new() { Has = person.Page.Locator("th", new() { HasTextRegex = new("^R10$") }) });
        await Expect(part).ToContainTextAsync("100k", new() { Timeout = SolvingMilliseconds });
        await Expect(part).ToContainTextAsync("330k");
        var point = card.Locator(
            "tr",
            new() { Has = person.Page.Locator("th", new() { HasTextRegex = new($"^{Combo.Anode}$") }) }
        );
        await Expect(point).ToContainTextAsync(" V");
        await Expect(card.Locator("th", new() { HasTextRegex = new("^R7$") })).ToHaveCountAsync(0);
        await person.Page.ScreenshotAsync(
            new() { Path = Path.Combine(AppContext.BaseDirectory, "pictures", "sheet-compared.png"), FullPage = true }
        );
    }

    [Fact]
    public async Task File_takes_the_place_of_the_text_and_one_undo_brings_that_back()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SheetPerson.AtAsync(someone, bench.Url);

        await FileAsync(person, Filed);
        await Expect(person.Text).ToContainTextAsync("R77: 4k7 IN -> GND");
        await Expect(person.Page.Locator(".sheet-paper [data-part=R77]")).ToBeVisibleAsync();
        await Expect(person.Kept).ToContainTextAsync("Not saved yet");

        await person.Page.Keyboard.PressAsync("Control+z");
        await Expect(person.Text).ToContainTextAsync("Kittiwake 15");
        await Expect(person.Text).Not.ToContainTextAsync("R77");
    }

    [Fact]
    public async Task Text_as_typed_goes_into_a_file()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SheetPerson.AtAsync(someone, bench.Url);
        await FileAsync(person, Filed);

        var file = await person.Page.RunAndWaitForDownloadAsync(() =>
            person.Page.GetByRole(AriaRole.Button, new() { Name = "Text as a file" }).ClickAsync()
        );

        Assert.Equal("sheet-of-job-1001.yaml", file.SuggestedFilename);
        Assert.Equal(
            Filed.ReplaceLineEndings("\n"),
            await File.ReadAllTextAsync(await file.PathAsync(), TestContext.Current.CancellationToken)
        );
    }

    [Fact]
    public async Task Sheet_of_another_job_is_begun_from_and_saved_beside_this_one()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SheetPerson.AtAsync(someone, bench.Url);
        var other = person.Page.Locator("#other-sheet");
        var option = other.Locator("option", new() { HasText = "Saltmarsh" });
        await Expect(option).ToHaveCountAsync(1);
        var job = await option.GetAttributeAsync("value");

        await other.SelectOptionAsync(job!);
        await Expect(person.Text).ToContainTextAsync("unit: Saltmarsh LM2");
        await person.Page.Keyboard.PressAsync("Control+s");
        await Expect(person.Kept).ToContainTextAsync("Saved as version 2");

        var request = person.Page.APIRequest;
        var theirs = await (await request.GetAsync($"{bench.Url}/job/{job}/sheet/text.yaml")).TextAsync();
        var ours = await (await request.GetAsync($"{bench.Url}/job/1001/sheet/text.yaml")).TextAsync();
        Assert.Equal(theirs, ours);
    }

    [Fact]
    public async Task Draft_on_its_way_while_the_sheet_is_saved_takes_nothing_back()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SheetPerson.AtAsync(someone, bench.Url);
        var setOut = new TaskCompletionSource();
        var saved = new TaskCompletionSource();
        await person.Page.RouteAsync(
            "**/sheet/draft",
            async draft =>
            {
                setOut.TrySetResult();
                await saved.Task;
                await draft.ContinueAsync();
            }
        );

        await FileAsync(person, Filed);
        await setOut.Task;
        await person.Page.Keyboard.PressAsync("Control+s");
        await Expect(person.Kept).ToContainTextAsync("Saved as version 2");
        await person.Page.RunAndWaitForResponseAsync(() => Task.FromResult(saved.TrySetResult()), "**/sheet/drop-draft");

        await Expect(person.Kept).ToContainTextAsync("Saved as version 2");
        await person.Page.ReloadAsync();
        await person.ReadyAsync();
        await Expect(person.Kept).ToContainTextAsync("Version 2, saved");
        await Expect(person.Told).ToBeEmptyAsync();
    }

    private static Task FileAsync(SheetPerson person, string text) =>
        person
            .Page.Locator("#sheet-file")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "tern.yaml",
                    MimeType = "application/yaml",
                    Buffer = System.Text.Encoding.UTF8.GetBytes(text),
                }
            );
}
