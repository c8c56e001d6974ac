using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

public sealed class BenchPageTests(Chromium chromium)
{
    [Fact]
    public async Task First_page_is_the_demo_combo_with_its_suspects()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);

        await Expect(person.Page.Locator("h1")).ToContainTextAsync("Kittiwake 15");
        await Expect(person.Page.Locator(".cautions")).ToContainTextAsync("can kill");
        await person.SettledAsync();
        Assert.NotEmpty(await person.RankingAsync());
        await Expect(person.Suspects.First).ToContainTextAsync("R10");
        await Expect(person.Page.Locator(".channel .sentences")).ToHaveCountAsync(2);
    }

    [Fact]
    public async Task Reading_is_stored_judged_and_changes_the_suspects()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.SettledAsync();
        var before = await person.RankingAsync();

        await person.TypeAsync($"{Combo.Cathode} = 0 V");

        await Expect(person.Said).ToContainTextAsync("Stored");
        await Expect(person.Line).ToHaveValueAsync("");
        await Expect(person.Point(Combo.Cathode).First).ToContainTextAsync("0 V");
        await person.SettledAsync();
        await Expect(person.Point(Combo.Cathode).First).ToContainTextAsync("low");
        Assert.NotEqual(before, await person.RankingAsync());
    }

    [Fact]
    public async Task Wrong_line_says_what_is_wrong_and_keeps_the_text()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);

        await person.TypeAsync("V99.6 = 62 V");

        await Expect(person.Said).ToContainTextAsync("Wrong");
        await Expect(person.Said).ToContainTextAsync("V99.6");
        await Expect(person.Line).ToHaveValueAsync("V99.6 = 62 V");
        await Expect(person.Line).ToHaveAttributeAsync("aria-invalid", "true");
    }

    [Fact]
    public async Task Reloading_and_another_tab_show_the_same_state()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var first = await BenchPerson.AtAsync(someone, bench.Url);
        var second = await BenchPerson.AtAsync(someone, bench.Url);
        await first.SettledAsync();

        await first.TypeAsync($"{Combo.Cathode} = 1.35 V");

        await Expect(second.Point(Combo.Cathode).First).ToContainTextAsync("1.35 V");
        await first.SettledAsync();
        await second.SettledAsync();
        var ranking = await first.RankingAsync();
        Assert.Equal(ranking, await second.RankingAsync());
        await first.Page.ReloadAsync();
        await first.ReadyAsync();
        await first.SettledAsync();
        Assert.Equal(ranking, await first.RankingAsync());
    }

    [Fact]
    public async Task Proposed_reading_is_put_into_the_line_with_the_caret_at_the_figure()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.SettledAsync();
        // With the anode's reading withdrawn the case is open again, and weighed anew.
        await person.WeighedAnewAsync(() => person.Point(Combo.Anode).First.GetByRole(AriaRole.Button).ClickAsync());
        var next = person.Page.Locator(".nexts > .next").First;
        await Expect(next).ToBeVisibleAsync(new() { Timeout = 60_000 });
        var where = await next.GetAttributeAsync("data-where");

        await next.GetByRole(AriaRole.Button, new() { NameRegex = new("Take it") }).ClickAsync();

        await Expect(person.Line).ToBeFocusedAsync();
        await Expect(person.Line).ToHaveValueAsync(new System.Text.RegularExpressions.Regex($"^{where} = "));
        Assert.Equal($"{where} = ".Length, await person.Line.EvaluateAsync<int>("i => i.selectionStart"));
    }

    [Fact]
    public async Task Line_is_completed_from_the_keyboard()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);

        await person.Line.PressSequentiallyAsync("V1.");
        await Expect(person.Page.GetByRole(AriaRole.Option).First).ToBeVisibleAsync();
        await person.Line.PressAsync("ArrowDown");
        await person.Line.PressAsync("Enter");

        await Expect(person.Line).ToHaveValueAsync(new System.Text.RegularExpressions.Regex(@"^V1\.\d = $"));
        await Expect(person.Said).ToHaveTextAsync("");
    }

    [Fact]
    public async Task Withdrawn_reading_counts_no_more_and_stays_in_the_timeline()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.TypeAsync($"{Combo.Cathode} = 7.7 V");
        await Expect(person.Point(Combo.Cathode).First).ToContainTextAsync("7.7 V");

        await person.Point(Combo.Cathode).First.GetByRole(AriaRole.Button).ClickAsync();

        await Expect(person.Page.Locator(".points")).Not.ToContainTextAsync("7.7 V");
        await Expect(person.Page.Locator(".timeline")).ToContainTextAsync("Reading withdrawn");
        await Expect(person.Page.Locator(".timeline")).ToContainTextAsync($"{Combo.Cathode} = 7.7 V");
    }
}
