using System.Diagnostics;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>The sheet's page as it is seen: with a stage put in and an error marked, and how soon the drawing follows a changed value.</summary>
public sealed class SheetLooksTests(Chromium chromium)
{
    private const int Changes = 8;

    [Theory]
    [InlineData(1440, ColorScheme.Light)]
    [InlineData(820, ColorScheme.Dark)]
    public async Task Sheet_with_a_stage_and_an_error_fits_its_width(int width, ColorScheme scheme)
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync(width, scheme);
        var person = await SheetPerson.AtAsync(someone, bench.Url);
        var stage = person.Page.Locator("#stage");
        await Expect(stage.Locator("option")).Not.ToHaveCountAsync(1);

        await stage.SelectOptionAsync(new SelectOptionValue { Label = "Cathode follower" });
        await Expect(person.Page.Locator("[data-said=drawing]")).ToHaveTextAsync("As typed.");
        await LooksTests.LookAsync(new(person.Page), $"sheet-stage-{width}-{scheme}");
        await person.Page.Keyboard.PressAsync("Escape");
        await person.Page.Keyboard.PressAsync("End");
        await person.Page.Keyboard.TypeAsync("\nR90: 47k carbn V6.3>GND");
        await Expect(person.Problems.Filter(new() { HasText = "carbn" })).Not.ToHaveCountAsync(0);

        await LooksTests.LookAsync(new(person.Page), $"sheet-error-{width}-{scheme}");
    }

    [Fact]
    public async Task Drawing_of_a_hundred_parts_shows_a_changed_value()
    {
        await using var bench = await BenchUnderTest.StartAsync();
        await using var someone = await chromium.SomeoneAsync();
        var person = await SheetPerson.AtAsync(someone, bench.Url);
        var other = person.Page.Locator("#other-sheet");
        var option = other.Locator("option", new() { HasText = "Saltmarsh" });
        await Expect(option).ToHaveCountAsync(1);
        await other.SelectOptionAsync((await option.GetAttributeAsync("value"))!);
        var paper = person.Page.Locator(".sheet-paper");
        var part = paper.Locator("[data-part=R12]").First;
        await Expect(part).ToContainTextAsync("10k");
        await part.Locator(".name").First.ClickAsync(new() { Force = true });
        await person.Page.Keyboard.PressAsync("Home");
        for (var i = 0; i < "R12:  1".Length; i++)
        {
            await person.Page.Keyboard.PressAsync("ArrowRight");
        }

        List<double> waits = [];
        for (var i = 0; i < Changes; i++)
        {
            var drawn = await paper.GetAttributeAsync("data-drawn");
            var clock = Stopwatch.StartNew();
            await person.Page.Keyboard.PressAsync(i % 2 == 0 ? "2" : "Backspace");
            await person.Page.WaitForFunctionAsync(
                "before => document.querySelector('.sheet-paper').dataset.drawn !== before",
                drawn,
                new() { PollingInterval = 5 }
            );
            waits.Add(clock.Elapsed.TotalMilliseconds);
            await Expect(part).ToContainTextAsync(i % 2 == 0 ? "120k" : "10k");
        }

        TestContext.Current.TestOutputHelper!.WriteLine(
            $"From the key to the drawing, 98 parts: {string.Join(", ", waits.Select(w => $"{w:0}"))} ms"
        );
    }
}
