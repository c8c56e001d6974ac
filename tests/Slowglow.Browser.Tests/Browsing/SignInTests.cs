using Deque.AxeCore.Playwright;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Slowglow.Bench.People;
using Slowglow.Workshop.People;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>People with a PIN, at the page.</summary>
public sealed class SignInTests(Chromium chromium)
{
    private static readonly string Pictures = Path.Combine(AppContext.BaseDirectory, "pictures");

    [Fact]
    public async Task Owner_gives_pins_and_from_then_on_everybody_signs_in_and_roles_hold()
    {
        await using var bench = await BenchUnderTest.StartAsync([]);
        await using var someone = await chromium.SomeoneAsync();
        var counter = await CounterPerson.AtAsync(someone, bench.Url + "/settings");
        var page = counter.Page;
        var form = page.Locator("form[aria-labelledby=people-title]");
        foreach (var (name, role, pin, i) in new[] { ("Ada", "Owner", "4711", 0), ("Bea", "Bench", "0815", 1) })
        {
            await form.GetByRole(AriaRole.Button, new() { Name = "Another person" }).ClickAsync();
            await form.GetByLabel("Name").Nth(i).FillAsync(name);
            await form.GetByLabel("Role").Nth(i).SelectOptionAsync(role);
            await form.GetByLabel("New PIN").Nth(i).FillAsync(pin);
        }

        await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, "people-1440.png"), FullPage = true });
        await form.GetByRole(AriaRole.Button, new() { Name = "Settle the people" }).ClickAsync();
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/sign-in"));
        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{v.Id}: {v.Help}"));
        await page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, "sign-in-1440.png"), FullPage = true });

        await EnterAsync(page, "Ada", "9999");
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("That is not the PIN.");
        await EnterAsync(page, "Bea", "0815");
        await Expect(page).ToHaveURLAsync(bench.Url + "/settings");
        await Expect(page.Locator(".whoisin")).ToContainTextAsync("Bea, bench");
        await counter.GoAsync(bench.Url + "/book-in");
        await counter.FillAsync(("in-name", "Ottoline"), ("in-model", "Tern 2"), ("in-complaint", "hums"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Book it in" }).ClickAsync();
        await counter.FillAsync(("hours-what", "looking"), ("hours-minutes", "30"));
        await counter.PressAsync("hours", "Enter the minutes");
        await Expect(counter.Card("dealings")).ToContainTextAsync("Bea");
        await counter.PressAsync("invoice", "By hours and parts");
        await counter.PressAsync("invoice", "Issue the invoice");
        await Expect(counter.Card("invoice")).ToContainTextAsync("Bea (bench) may not issue invoices.");

        var job = page.Url;
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign out" }).ClickAsync();
        await Expect(page).ToHaveURLAsync(bench.Url + "/sign-in");
        await page.GotoAsync(job);
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/sign-in\\?back="));
        await EnterAsync(page, "Ada", "4711");
        await Expect(page).ToHaveURLAsync(job);
        await page.Locator("[data-interactive=true]").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await counter.PressAsync("invoice", "By hours and parts");
        await counter.PressAsync("invoice", "Issue the invoice");
        await Expect(counter.Card("invoice")).ToContainTextAsync("Invoice 1");
        await page.SetViewportSizeAsync(820, 900);
        await LooksTests.LookAsync(new BenchPerson(page), "signed-in-820");
    }

    [Fact]
    public async Task Nothing_is_to_be_had_without_a_pin()
    {
        await using var bench = await BenchUnderTest.StartAsync([]);
        var change = bench.Services.GetRequiredService<ChangePeople>();
        Assert.Empty(await change.RunAsync([("Ada", Role.Owner, "4711")], TestContext.Current.CancellationToken));
        using var client = new HttpClient(new HttpClientHandler { AllowAutoRedirect = false })
        {
            BaseAddress = new Uri(bench.Url),
        };
        foreach (
            var path in new[]
            {
                "/",
                "/board",
                "/settings",
                "/photos/x.jpg",
                "/job/1001/papers/receipt.pdf",
                "/sheets",
                "/assets/../board",
                "/Sign-In/../board",
            }
        )
        {
            var answer = await client.GetAsync(path, TestContext.Current.CancellationToken);
            Assert.Equal("/sign-in", answer.Headers.Location?.OriginalString.Split('?')[0]);
        }

        Assert.Equal(401, (int)(await client.GetAsync("/_blazor", TestContext.Current.CancellationToken)).StatusCode);
        Assert.Equal(
            401,
            (int)(await client.PostAsync("/_blazor/negotiate", null, TestContext.Current.CancellationToken)).StatusCode
        );
        using var form = new FormUrlEncodedContent([new("who", "Ada"), new("pin", "4711"), new("back", "/")]);
        Assert.Equal(
            400,
            (int)(await client.PostAsync("/sign-in/enter", form, TestContext.Current.CancellationToken)).StatusCode
        );
    }

    private static async Task EnterAsync(IPage page, string name, string pin)
    {
        await page.Locator("#who").SelectOptionAsync(name);
        await page.Locator("#pin").FillAsync(pin);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
    }
}
