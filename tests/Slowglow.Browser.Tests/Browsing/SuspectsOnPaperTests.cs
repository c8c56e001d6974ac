using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>What the bench suspects goes to the papers of the job.</summary>
public sealed class SuspectsOnPaperTests(Chromium chromium)
{
    [Fact]
    public async Task Suspect_is_needed_and_the_list_is_noted_as_it_stands()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.SettledAsync();
        await person.Suspects.First.GetByRole(AriaRole.Button, new() { Name = "Needed: put R10 on the list" }).ClickAsync();
        await Expect(person.Suspects.First).ToContainTextAsync("On the list of parts needed.");
        await person.Page.GetByRole(AriaRole.Button, new() { Name = "Note them as they stand" }).ClickAsync();
        await Expect(person.Page.GetByText("On the timeline as they stand.")).ToBeVisibleAsync();
        var noted = person.Page.Locator(".timeline li").First;
        await Expect(noted).ToContainTextAsync("Suspects as they stood");
        await Expect(noted).ToContainTextAsync("R10 drifted up");

        // What is measured afterwards changes the suspects, not what was noted.
        var stood = await noted.Locator(".said").InnerTextAsync();
        await person.TypeAsync($"{Combo.Anode} = 152 V");
        await Expect(person.Said).ToContainTextAsync("Stored");
        var counter = new CounterPerson(person);
        await counter.GoAsync(bench.Url + "/job/1001/papers");
        await Expect(counter.Card("dealings")).ToContainTextAsync(stood);
        await Expect(counter.Card("parts")).ToContainTextAsync("R10");
        await Expect(counter.Card("parts")).ToContainTextAsync("not ordered yet");
    }
}
