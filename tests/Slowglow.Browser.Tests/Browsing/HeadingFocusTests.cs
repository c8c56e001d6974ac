using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>Where the focus is when a page has just come: what a screen reader reads first, and where the first letter goes.</summary>
public sealed class HeadingFocusTests(Chromium chromium)
{
    [Fact]
    public async Task Heading_of_a_page_gone_to_has_the_focus()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url + "/jobs");

        await person.Page.GetByRole(AriaRole.Link, new() { Name = "Stock", Exact = true }).ClickAsync();

        await Expect(person.Page.GetByRole(AriaRole.Heading, new() { Name = "Stock", Exact = true })).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Heading_that_comes_late_does_not_take_the_hands_out_of_a_field()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.Line.PressSequentiallyAsync($"{Combo.Anode}");

        // What the page asks for once it is drawn, as late as a busy machine may be with it.
        await person.Page.EvaluateAsync("slowglow.focusHeading()");
        await person.Page.Keyboard.TypeAsync(" = 61.7 V");

        await Expect(person.Line).ToHaveValueAsync($"{Combo.Anode} = 61.7 V");
    }

    [Fact]
    public async Task Line_half_typed_goes_on_after_the_page_is_loaded_anew()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.Line.PressSequentiallyAsync($"{Combo.Anode} = 6");

        await person.Page.ReloadAsync();
        await person.ReadyAsync();
        await Expect(person.Line).ToBeFocusedAsync();
        await person.Page.Keyboard.TypeAsync("1.7 V");

        await Expect(person.Line).ToHaveValueAsync($"{Combo.Anode} = 61.7 V");
    }
}
