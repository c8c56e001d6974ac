using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>A learner plays a round against a hidden fault.</summary>
public sealed class PracticePageTests(Chromium chromium)
{
    private const int SolvingMilliseconds = 240_000;

    [Fact]
    public async Task A_round_is_measured_survives_a_reload_and_ends_with_the_programs_way()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url + "/practice");

        await person.Page.Locator("#practice-number").FillAsync("many");
        await PressAsync(person, "Put it on the bench");
        await Expect(person.Page.Locator(".findings")).ToContainTextAsync("'many' is no number of a unit");

        await person.Page.Locator("#practice-number").FillAsync("3");
        await PressAsync(person, "Put it on the bench");
        await Expect(person.Page.Locator("#practice-measure")).ToBeVisibleAsync(new() { Timeout = SolvingMilliseconds });

        await AskAsync(person, "practice-measure", "NOWHERE");
        await Expect(person.Page.Locator(".findings")).ToContainTextAsync("NOWHERE", new() { Timeout = SolvingMilliseconds });
        await Expect(person.Page.Locator("#practice-measure")).ToHaveValueAsync("NOWHERE");
        await AskAsync(person, "practice-measure", "HT1");
        await Expect(Rows(person)).ToHaveCountAsync(1, new() { Timeout = SolvingMilliseconds });
        await AskAsync(person, "practice-measure", "R1 ohm");
        await Expect(Rows(person)).ToHaveCountAsync(2, new() { Timeout = SolvingMilliseconds });
        await Expect(Rows(person).First).ToContainTextAsync(" V (");
        await Expect(Rows(person).Last).ToContainTextAsync("ohm");

        await person.Page.ReloadAsync();
        await person.ReadyAsync();
        await Expect(Rows(person)).ToHaveCountAsync(2, new() { Timeout = SolvingMilliseconds });

        await PressAsync(person, "Give up and see what it was");
        await Expect(person.Page.Locator(".stored")).ToContainTextAsync("Given up");
        var programs = person.Page.GetByRole(AriaRole.Region, new() { Name = "The program's way" });
        await Expect(programs).ToBeVisibleAsync(new() { Timeout = SolvingMilliseconds });
        await Expect(person.Page.Locator("progress")).ToHaveCountAsync(0);
        await LooksTests.LookAsync(person, "practice-1440-Light");
        await person.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await person.Page.SetViewportSizeAsync(820, 900);
        await LooksTests.LookAsync(person, "practice-820-Dark");
    }

    private static ILocator Rows(BenchPerson person) => person.Page.Locator("#practice-done tbody tr");

    private static Task PressAsync(BenchPerson person, string name) =>
        person.Page.GetByRole(AriaRole.Button, new() { Name = name }).ClickAsync();

    private static async Task AskAsync(BenchPerson person, string box, string what)
    {
        await person.Page.Locator("#" + box).FillAsync(what);
        await Expect(person.Page.GetByRole(AriaRole.Button, new() { Name = "Measure" }))
            .ToBeEnabledAsync(new() { Timeout = SolvingMilliseconds });
        await person.Page.Locator("#" + box).PressAsync("Enter");
    }
}
