using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

public sealed class SheetPageTests(Chromium chromium)
{
    [Fact]
    public async Task Slip_of_the_pen_is_marked_and_mended_by_one_key_and_the_drawing_follows()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SheetPerson.AtAsync(someone, bench.Url);

        await person.TypeAboveAsync("signl:");
        await Expect(person.Problems.First).ToContainTextAsync("did you mean signal?");
        await person.Page.Keyboard.PressAsync("Control+.");

        await Expect(person.Text).ToContainTextAsync("signal:");
        await person.Page.Keyboard.PressAsync("Control+a");
        await person.Page.Keyboard.InsertTextAsync("sheet: 1\nunit: Tern 2\nparts:\n  R77: 4k7 IN -> GND\n  C9: 1u IN -> GND\n");
        await Expect(person.Page.Locator(".sheet-paper [data-part=R77]")).ToBeVisibleAsync();
        await Expect(person.Page.Locator("[data-said=drawing]")).ToHaveTextAsync("As typed.");
    }

    [Fact]
    public async Task Text_outlives_a_reload_and_a_lost_connection()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SheetPerson.AtAsync(someone, bench.Url);
        await person.TypeAboveAsync("# before the reload");
        await person.Page.ReloadAsync();
        await person.ReadyAsync();
        await Expect(person.Text).ToContainTextAsync("before the reload");

        await someone.SetOfflineAsync(true);
        await person.TypeAboveAsync("# while the connection was lost");
        await Expect(person.Kept).ToContainTextAsync("kept in this browser");
        await someone.SetOfflineAsync(false);

        await Expect(person.Kept).ToContainTextAsync("by the bench program");
        await Expect(person.Text).ToContainTextAsync("while the connection was lost");
        await person.Page.Keyboard.PressAsync("Control+s");
        await Expect(person.Kept).ToContainTextAsync("Saved as version 2");
    }

    [Fact]
    public async Task Two_windows_never_write_over_each_other()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var one = await SheetPerson.AtAsync(someone, bench.Url);
        var two = await SheetPerson.AtAsync(someone, bench.Url);
        await one.TypeAboveAsync("# from the first window");
        await two.TypeAboveAsync("# from the second window");
        await one.Page.Keyboard.PressAsync("Control+s");
        await Expect(one.Kept).ToContainTextAsync("Saved as version 2");

        await Expect(two.Told).ToContainTextAsync("A newer version");
        await Expect(two.Text).ToContainTextAsync("from the second window");
        await two.Page.Keyboard.PressAsync("Control+s");
        await Expect(two.Kept).ToContainTextAsync("Not saved. What you typed is kept");
        await two.Told.GetByText("Save mine after it").ClickAsync();
        await Expect(two.Kept).ToContainTextAsync("Saved as version 3");
        await Expect(one.Text).ToContainTextAsync("from the second window");
    }

    [Fact]
    public async Task Save_asked_for_while_another_is_on_its_way_is_not_lost()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var one = await SheetPerson.AtAsync(someone, bench.Url);
        var two = await SheetPerson.AtAsync(someone, bench.Url);
        await two.TypeAboveAsync("# from the second window");
        await one.TypeAboveAsync("# from the first window");
        await one.Page.Keyboard.PressAsync("Control+s");
        await Expect(two.Told).ToContainTextAsync("A newer version");

        // The refusal of the first press comes only after the second press.
        var answered = new TaskCompletionSource();
        await two.Page.RouteAsync(
            "**/sheet/save",
            async route =>
            {
                await answered.Task;
                await route.ContinueAsync();
            }
        );
        await two.Page.Keyboard.PressAsync("Control+s");
        await Expect(two.Kept).ToHaveTextAsync("Saving ...");
        await two.Told.GetByText("Save mine after it").ClickAsync();
        answered.SetResult();

        await Expect(two.Kept).ToContainTextAsync("Saved as version 3");
        await Expect(one.Text).ToContainTextAsync("from the second window");
    }

    [Fact]
    public async Task Stage_goes_among_the_parts_and_the_page_is_free_of_accessibility_faults()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SheetPerson.AtAsync(someone, bench.Url);
        var page = person.Page;

        // With the caret in the head of the sheet the stage still goes among the parts, so that the reader has nothing against it.
        var stage = page.Locator("#stage");
        await Expect(stage.Locator("option")).Not.ToHaveCountAsync(1);
        await person.Text.ClickAsync();
        await page.Keyboard.PressAsync("Control+Home");
        await stage.SelectOptionAsync(new SelectOptionValue { Label = "Bias supply below chassis" });
        await Expect(person.Text).ToContainTextAsync("Bias supply below chassis");
        await Expect(page.Locator(".sheet-problems .error")).ToHaveCountAsync(0);
        await Expect(page.GetByText("is no key of the sheet")).ToHaveCountAsync(0);

        // Without its style sheet the drawing would be black paper.
        await Expect(page.Locator("[data-said=drawing]")).ToHaveTextAsync("As typed.");
        await Expect(page.Locator(".sheet-paper rect.sheet")).Not.ToHaveCSSAsync("fill", "rgb(0, 0, 0)");

        // The editor's own scroller holds text that takes the keyboard, which the rule does not see.
        var found = await page.RunAxe();
        var nodes = found.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id}: {n.Html}"));
        Assert.All(nodes, n => Assert.Contains("cm-scroller", n, StringComparison.Ordinal));
        await page.ScreenshotAsync(
            new() { Path = Path.Combine(AppContext.BaseDirectory, "pictures", "sheet-1440-Light.png"), FullPage = true }
        );
    }
}
