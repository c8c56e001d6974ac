using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>The bench program is out of reach for twenty seconds while somebody goes on typing.</summary>
public sealed class LostConnectionTests(Chromium chromium)
{
    private const int Seconds = 20;
    private const int BackMilliseconds = 60_000;

    [Fact]
    public async Task Reading_line_keeps_every_letter_and_is_stored_once_the_program_is_back()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var wire = CuttableWire.To(bench.Url);
        await using var someone = await chromium.SomeoneAsync();
        var person = await BenchPerson.AtAsync(someone, wire.Url);
        await person.SettledAsync();
        await person.Line.PressSequentiallyAsync($"{Combo.Cathode} ");

        wire.Cut();
        await Expect(person.Page.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
        await TypeSlowlyAsync(person.Line, "= 0.437 V on bench");
        await person.Line.PressAsync("Enter");
        await Expect(person.Line).ToHaveValueAsync($"{Combo.Cathode} = 0.437 V on bench");
        wire.Mend();

        await Expect(person.Page.Locator("#components-reconnect-modal"))
            .Not.ToBeVisibleAsync(new() { Timeout = BackMilliseconds });
        await person.ReadyAsync();
        await Expect(person.Line).ToHaveValueAsync($"{Combo.Cathode} = 0.437 V on bench", new() { Timeout = BackMilliseconds });
        await Expect(person.Point(Combo.Cathode)).ToHaveCountAsync(0);
        await person.Line.PressAsync("Enter");
        await Expect(person.Said).ToContainTextAsync("Stored", new() { Timeout = BackMilliseconds });
        await Expect(person.Point(Combo.Cathode)).ToContainTextAsync("437 mV");
    }

    [Fact]
    public async Task Sheet_goes_on_being_typed_and_the_program_has_all_of_it_afterwards()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var wire = CuttableWire.To(bench.Url);
        await using var someone = await chromium.SomeoneAsync();
        var person = await SheetPerson.AtAsync(someone, wire.Url);
        await person.TypeAboveAsync("# before");
        await Expect(person.Kept).ToContainTextAsync("by the bench program");

        wire.Cut();
        await person.Text.ClickAsync();
        await person.Page.Keyboard.PressAsync("Control+Home");
        await TypeSlowlyAsync(person.Text, "# typed with the program away");
        await person.Page.Keyboard.PressAsync("Control+s");
        await Expect(person.Kept).ToContainTextAsync("does not answer");
        await person.Page.Keyboard.TypeAsync(" and after a save that failed");
        wire.Mend();

        await Expect(person.Kept).ToContainTextAsync("by the bench program", new() { Timeout = BackMilliseconds });
        await Expect(person.Page.Locator("#components-reconnect-modal")).Not.ToBeVisibleAsync();
        await Expect(person.Text).ToContainTextAsync("# typed with the program away and after a save that failed");
        await person.Page.Keyboard.PressAsync("Control+s");
        await Expect(person.Kept).ToContainTextAsync("Saved as version 2", new() { Timeout = BackMilliseconds });
        var text = await person.Page.APIRequest.GetAsync($"{bench.Url}/job/1001/sheet/text.yaml");
        Assert.Contains(
            "# typed with the program away and after a save that failed",
            await text.TextAsync(),
            StringComparison.Ordinal
        );
    }

    /// <summary>Over the whole time that the wire is cut.</summary>
    private static async Task TypeSlowlyAsync(ILocator where, string text)
    {
        foreach (var letter in text)
        {
            await where.PressAsync(letter == ' ' ? "Space" : letter.ToString());
            await Task.Delay(TimeSpan.FromSeconds((double)Seconds / text.Length), TestContext.Current.CancellationToken);
        }
    }
}
