using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>Stored energy, stress, root cause, rewinding and offers of the demo combo.</summary>
public sealed class SupplyPageTests(Chromium chromium)
{
    private const int Solving = 120_000;

    [Fact]
    public async Task Open_bleeder_makes_the_reservoir_hold_longer()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SupplyPerson.AtAsync(someone, bench.Url, "stored-energy");
        await Expect(person.Page.Locator(".wait").First).ToContainTextAsync("stay dangerous", new() { Timeout = Solving });

        await person.SubmitAsync("#fault", "R1 open");
        await Expect(person.Page.Locator("#charges-title")).ToContainTextAsync("with R1 open", new() { Timeout = Solving });
        await person.SubmitAsync("#fault", "R1 sulking");

        await Expect(person.Page.Locator("#fault-wrong")).ToContainTextAsync("not a way to fail");
    }

    [Fact]
    public async Task Another_part_says_what_moves_and_nonsense_gets_a_sentence()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SupplyPerson.AtAsync(someone, bench.Url, "stress");
        await Expect(person.Page.Locator("#stress-title")).ToBeVisibleAsync(new() { Timeout = Solving });

        await person.SubmitAsync("#other", "R10 instead of nothing");
        await Expect(person.Page.Locator("#other-wrong")).ToContainTextAsync("does not say what comes in the place of what");
        await person.SubmitAsync("#other", "R10 with 220k 1W");

        await Expect(person.Page.Locator("#tried-title")).ToContainTextAsync("220k", new() { Timeout = Solving });
        await Expect(person.Page.Locator("section:has(#tried-title)")).ToContainTextAsync("V1.6");
    }

    [Fact]
    public async Task Dead_transformer_has_its_killers_named()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SupplyPerson.AtAsync(someone, bench.Url, "root-cause?part=T1");
        await Expect(person.Page.Locator("#causes-title")).ToBeVisibleAsync(new() { Timeout = Solving });
        await Expect(person.Page.Locator(".ledger")).ToContainTextAsync("C1 short");

        await person.SubmitAsync("#dead", "T99");

        await Expect(person.Page.Locator("#dead-wrong")).ToContainTextAsync("there is no part T99");
    }

    [Fact]
    public async Task Transformer_is_specified_and_the_wound_part_checked_and_noted()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SupplyPerson.AtAsync(someone, bench.Url, "rewinding");
        await Expect(person.Page.Locator(".winder-sheet")).ToContainTextAsync("turns per volt", new() { Timeout = Solving });

        await EnterAsync(person, "ohms of P at 20 degrees", "24 ohm");
        await Expect(Row(person, "ohms of P at 20 degrees")).ToContainTextAsync("passes");
        await EnterAsync(person, "P/HT, nothing drawn", "1.2");
        await Expect(Row(person, "P/HT, nothing drawn")).ToContainTextAsync("fails");
        var flash = Row(person, "P and everything else with the core");
        await flash.GetByRole(AriaRole.Textbox).FillAsync("2 kV");
        await flash.GetByRole(AriaRole.Combobox).SelectOptionAsync("held");
        await Expect(flash).ToContainTextAsync("too few volts");
        await person.Page.GetByRole(AriaRole.Button, new() { Name = "Note it on the job" }).ClickAsync();

        await Expect(person.Page.Locator(".stored")).ToContainTextAsync("Noted");
        await person.Page.GotoAsync($"{bench.Url}/job/{SupplyPerson.Combo}");
        await Expect(person.Page.Locator(".timeline")).ToContainTextAsync("ohms of P at 20 degrees 24 ohm passes");
    }

    [Fact]
    public async Task Wishes_that_cannot_be_get_sentences_and_too_small_a_core_its_figure()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SupplyPerson.AtAsync(someone, bench.Url, "rewinding");
        await Expect(person.Page.Locator(".winder-sheet")).ToBeVisibleAsync(new() { Timeout = Solving });

        await person.SubmitAsync("#core", "EI1000");
        await Expect(person.Page.Locator("#rewind-wrong")).ToContainTextAsync("There is no core EI1000.");
        await person.SubmitAsync("#core", "");
        await person.Page.Locator("#measured").FillAsync("P/P = 1");
        await person.SubmitAsync("#mains", "");
        await Expect(person.Page.Locator("#rewind-wrong")).ToContainTextAsync("a ratio is between two different windings");
        await person.Page.Locator("#measured").FillAsync("");
        await person.SubmitAsync("#core", "EI54 18mm");

        await Expect(person.Page.Locator(".winder-sheet .refusal"))
            .ToContainTextAsync("cannot be wound on EI54", new() { Timeout = Solving });
    }

    [Fact]
    public async Task Offers_are_compared_by_rails_price_and_weeks()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SupplyPerson.AtAsync(someone, bench.Url, "offers");
        await FillAsync(person, 0, "new toroid", "230V; 230V 250mA; 6.3V 3A", "58", "9", "20%", "2");
        await FillAsync(person, 1, "odd one", "230V; 24V 1A", "5", "", "", "");
        await person.Page.GetByRole(AriaRole.Button, new() { Name = "Compare" }).ClickAsync();
        var table = person.Page.Locator(".offers.ledger");
        await Expect(table).ToContainTextAsync("80.40", new() { Timeout = Solving });
        await Expect(table.Locator("tr", new() { HasText = "new toroid" })).ToContainTextAsync("HT1");
        await Expect(table.Locator("tr", new() { HasText = "odd one" })).ToContainTextAsync("it has no winding for");

        await person.Page.Locator("#price-0").FillAsync("-3");
        await person.Page.GetByRole(AriaRole.Button, new() { Name = "Compare" }).ClickAsync();

        await Expect(person.Page.Locator(".offers-form [role=alert]")).ToContainTextAsync("none below zero");
    }

    private static ILocator Row(SupplyPerson person, string what) =>
        person.Page.Locator(".wound-form tr", new() { HasText = what }).First;

    private static async Task EnterAsync(SupplyPerson person, string what, string figure)
    {
        var box = Row(person, what).GetByRole(AriaRole.Textbox);
        await box.FillAsync(figure);
        await box.PressAsync("Tab");
    }

    private static async Task FillAsync(SupplyPerson person, int index, params string[] texts)
    {
        foreach (var (field, text) in new[] { "name", "windings", "price", "freight", "tax", "weeks" }.Zip(texts))
        {
            await person.Page.Locator($"#{field}-{index}").FillAsync(text);
        }
    }
}
