using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>The drawing on the bench page, worked with by mouse, keys and the reading line.</summary>
public sealed class DrawingTests(Chromium chromium)
{
    [Fact]
    public async Task Points_and_parts_of_the_drawing_lead_to_readings()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.SettledAsync();
        var drawing = person.Page.Locator(".drawing-card .drawn");
        var anode = drawing.Locator($"[data-point='{Combo.Anode}']");

        await drawing.ScrollIntoViewIfNeededAsync();
        await Expect(drawing.Locator(".ring").First).ToBeInViewportAsync();
        await anode.Locator(".spot").ClickAsync();
        await Expect(person.Line).ToHaveValueAsync($"{Combo.Anode} = ");
        await Expect(anode).ToContainTextAsync("▼ 33.1 V low");

        await drawing.Locator("[data-part='R10'] .name").ClickAsync();
        var note = person.Page.Locator("#part-note");
        await Expect(note).ToBeInViewportAsync(new() { Ratio = 0.95f });
        await Expect(note).ToContainTextAsync("of its rating)");
        await Expect(note).ToContainTextAsync("R10 drifted up");
        await Expect(note).ToContainTextAsync("lift one leg of R10");
        await note.GetByRole(AriaRole.Button, new() { Name = "Measure across it" }).ClickAsync();
        await Expect(person.Line).ToHaveValueAsync("R10 = ");

        await person.TypeAsync($"{Combo.Cathode} = 0 V");
        await Expect(drawing.Locator($"[data-point='{Combo.Cathode}']")).ToContainTextAsync("✕ 0 V dead");
    }

    [Fact]
    public async Task Slipped_point_is_asked_about_once_and_a_reading_can_be_taken_back()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.SettledAsync();

        await person.TypeAsync("V2.1 = 16.1 V");
        await Expect(person.Said).ToContainTextAsync("Did the point slip?");
        await person.Said.GetByRole(AriaRole.Button, new() { Name = "Make it that" }).ClickAsync();
        await Expect(person.Point("V2.1")).ToContainTextAsync("161 V");
        await Expect(person.Point("V2.1")).ToHaveCountAsync(1);
        await Expect(person.Said).Not.ToContainTextAsync("Did the point slip?");

        await person.Said.GetByRole(AriaRole.Button, new() { Name = "Take it back" }).ClickAsync();
        await Expect(person.Point("V2.1")).ToHaveCountAsync(0);
        await Expect(person.Line).ToHaveValueAsync("V2.1 = 161 V on bench");
    }

    [Fact]
    public async Task Drawing_is_one_stop_for_the_tab_key_and_arrows_walk_it()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, bench.Url);
        await person.SettledAsync();
        var marks = person.Page.Locator(".drawing-card .drawn [data-point], .drawing-card .drawn [data-part]");

        await Expect(person.Page.Locator(".drawing-card .drawn [tabindex='0']")).ToHaveCountAsync(1);
        await marks.First.FocusAsync();
        await person.Page.Keyboard.PressAsync("ArrowRight");
        await Expect(marks.Nth(1)).ToBeFocusedAsync();
        var second = await marks.Nth(1).GetAttributeAsync("data-part");
        await person.Page.Keyboard.PressAsync("Enter");
        await Expect(person.Page.Locator("#part-note h3")).ToContainTextAsync(second!);
    }

    [Fact]
    public async Task Drawing_stands_by_itself_with_its_own_style()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        List<string> refused = [];
        someone.Console += (_, message) => refused.AddRange(message.Type == "error" ? [message.Text] : []);
        var page = await someone.NewPageAsync();

        await page.GotoAsync($"{bench.Url}/job/1001/drawing.svg", new() { Timeout = 120_000 });

        await Expect(page.Locator("[data-part='R10'] .name")).ToHaveCSSAsync("font-weight", "700");
        Assert.Empty(refused);
    }
}
