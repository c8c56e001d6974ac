using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Typing;

/// <summary>Presses one key after the other, and counts.</summary>
internal sealed class Typist(IPage page)
{
    private ILocator Offered => page.Locator(".cm-tooltip-autocomplete li .cm-completionLabel").First;

    public int Presses { get; private set; }

    /// <summary>Presses, and shift and the like where they are held.</summary>
    public int Strokes { get; private set; }

    /// <summary>How often the list was looked at and its first word taken.</summary>
    public int Taken { get; private set; }

    public async Task TypeAsync(IEnumerable<KeyPress> presses)
    {
        foreach (var press in presses)
        {
            if (press.Offered is { } label)
            {
                await OfferedAsync(label);
                Taken++;
            }

            await page.Keyboard.PressAsync(press.Key);
            Presses++;
            Strokes += press.Strokes;
        }
    }

    private async Task OfferedAsync(string label)
    {
        try
        {
            await Expect(Offered).ToHaveTextAsync(label, new() { Timeout = 10_000 });
        }
        catch (PlaywrightException)
        {
            var offered = await page.Locator(".cm-tooltip-autocomplete li .cm-completionLabel").AllInnerTextsAsync();
            var text = await page.Locator(".cm-content").InnerTextAsync();
            Assert.Fail(
                $"'{label}' was to be offered first after {Strokes} keystrokes, not {string.Join(", ", offered.Take(5))}:\n{text}"
            );
        }
    }
}
