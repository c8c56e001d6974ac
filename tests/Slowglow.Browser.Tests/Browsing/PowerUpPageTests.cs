using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

public sealed class PowerUpPageTests(Chromium chromium)
{
    private const string Plan = "power-up?lamp=60W&step=3";

    [Fact]
    public async Task Bench_page_leads_to_the_supply_of_its_job()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, $"{bench.Url}/job/{SupplyPerson.Combo}");

        await person.Page.GetByRole(AriaRole.Link, new() { Name = "Offers" }).ClickAsync();

        await Expect(person.Page.GetByRole(AriaRole.Heading, new() { Level = 1 })).ToHaveTextAsync("Offers");
    }

    [Fact]
    public async Task Figures_are_typed_one_after_the_other_and_are_readings_of_the_job()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SupplyPerson.AtAsync(someone, bench.Url, Plan);
        var keys = person.Page.Keyboard;
        await Expect(Box(person, "MAINS")).ToBeFocusedAsync(new() { Timeout = 60_000 });

        await keys.TypeAsync("9.6");
        await keys.PressAsync("Enter");
        await Expect(Box(person, "HT1")).ToBeFocusedAsync();
        await keys.TypeAsync("168");
        await keys.PressAsync("Enter");

        await Expect(Line(person, "MAINS")).ToContainTextAsync("9.6 mA as it should be");
        await Expect(Line(person, "HT1")).ToContainTextAsync("168 V as it should be");
        await person.Page.GotoAsync($"{bench.Url}/job/{SupplyPerson.Combo}");
        await Expect(person.Page.Locator(".timeline")).ToContainTextAsync("HT1 = 168 V dc on up-115V-60W-valves-out");
        await Expect(person.Page.Locator(".timeline")).ToContainTextAsync("MAINS = 9.6 mA ac on up-115V-60W-valves-out");
    }

    [Fact]
    public async Task What_is_entered_is_still_there_when_the_page_comes_back()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SupplyPerson.AtAsync(someone, bench.Url, Plan);
        await TypeAsync(person, "HT2", "170");
        await Expect(Line(person, "HT2")).ToContainTextAsync("170 V");

        await person.GoAsync(Plan);

        await Expect(Line(person, "HT2")).ToContainTextAsync("170 V as it should be");
    }

    [Fact]
    public async Task Too_much_current_says_switch_off_and_a_dead_rail_names_suspects()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SupplyPerson.AtAsync(someone, bench.Url, Plan);

        await TypeAsync(person, "MAINS", "190");
        await TypeAsync(person, "HT1", "1.2");

        await Expect(person.Page.Locator(".stop-now")).ToContainTextAsync("Switch off now.");
        await Expect(Line(person, "HT1")).ToContainTextAsync("dead");
        await Expect(person.Page.Locator(".signs.fitting")).ToContainTextAsync("C1 short");
    }

    [Theory]
    [InlineData("bright", "'bright' is not understood")]
    [InlineData("62 on bench", "says more than what the meter shows")]
    public async Task Figure_that_cannot_be_gets_a_sentence_and_is_not_stored(string typed, string sentence)
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SupplyPerson.AtAsync(someone, bench.Url, Plan);

        await TypeAsync(person, "HT1", typed);

        await Expect(Line(person, "HT1")).ToContainTextAsync(sentence);
        await Expect(Box(person, "HT1")).ToHaveValueAsync(typed);
    }

    [Fact]
    public async Task Steps_turn_by_one_key_and_stay_in_the_address()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SupplyPerson.AtAsync(someone, bench.Url, Plan);
        await Expect(Box(person, "MAINS")).ToBeFocusedAsync(new() { Timeout = 60_000 });

        await person.Page.Keyboard.PressAsync("PageDown");

        await Expect(person.Page.Locator("#step-title")).ToContainTextAsync("Step 4 of 7");
        await Expect(person.Page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("step=4"));
        await Expect(Box(person, "MAINS")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Lamp_that_is_none_gets_a_sentence()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SupplyPerson.AtAsync(someone, bench.Url, Plan);

        await person.SubmitAsync("#lamp", "0W");

        await Expect(person.Page.Locator("#lamp-wrong")).ToContainTextAsync("'0W' is no lamp.");
    }

    private static ILocator Line(SupplyPerson person, string where) => person.Page.Locator($".step-point[data-point='{where}']");

    private static ILocator Box(SupplyPerson person, string where) => Line(person, where).Locator("input");

    private static async Task TypeAsync(SupplyPerson person, string where, string text)
    {
        await Box(person, where).FillAsync(text, new() { Timeout = 60_000 });
        await Box(person, where).PressAsync("Enter");
    }
}
