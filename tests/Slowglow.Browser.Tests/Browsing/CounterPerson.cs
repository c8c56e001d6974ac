using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>What happens at the counter and at the papers of a job.</summary>
internal sealed class CounterPerson(BenchPerson person)
{
    public IPage Page => person.Page;

    public ILocator State => Page.Locator("#job-state");

    public static async Task<CounterPerson> AtAsync(IBrowserContext browser, string url) =>
        new(await BenchPerson.AtAsync(browser, url));

    public Task GoAsync(string url) => person.GoAsync(url);

    public ILocator Card(string title) => Page.Locator($"section[aria-labelledby={title}-title]");

    /// <summary>Fills fields by their id, in order.</summary>
    public async Task FillAsync(params (string Id, string Text)[] fields)
    {
        foreach (var (id, text) in fields)
        {
            await Page.Locator("#" + id).FillAsync(text);
        }
    }

    public Task PressAsync(string card, string button) =>
        Card(card).GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).First.ClickAsync();

    public Task OpenAsync(string card, string summary) => Card(card).Locator("summary", new() { HasText = summary }).ClickAsync();

    public Task SaysAsync(string text) => Expect(Card("dealings")).ToContainTextAsync(text);

    public async Task TestAsync(string earthOhms)
    {
        foreach (
            var (name, figure) in new[]
            {
                ("earth bond, ohm", earthOhms),
                ("insulation resistance, megohm", "20"),
                ("protective conductor current, mA", "0.4"),
                ("touch current, mA", "0.1"),
            }
        )
        {
            await Page.GetByLabel("Measured " + name).FillAsync(figure);
        }

        await Page.GetByLabel("Lead, plug and strain relief are sound").CheckAsync();
        await Page.GetByLabel("The fuse fitted is the one marked").CheckAsync();
        await FillAsync(("safety-instrument", "tester 7"), ("safety-who", "Bea"));
        await PressAsync("safety", "Record the test");
    }
}
