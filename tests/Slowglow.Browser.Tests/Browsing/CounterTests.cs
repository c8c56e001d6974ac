using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>One job from booking in to collected payment, in a browser.</summary>
public sealed class CounterTests(Chromium chromium)
{
    private static readonly string Pictures = Path.Combine(AppContext.BaseDirectory, "pictures");

    [Fact]
    public async Task Job_is_booked_in_quoted_repaired_tested_paid_handed_over_and_comes_back_under_warranty()
    {
        await using var bench = await BenchUnderTest.StartAsync([]);
        await using var someone = await chromium.SomeoneAsync();
        var counter = await CounterPerson.AtAsync(someone, bench.Url + "/book-in");
        await BookInAsync(counter);
        await AgreeAsync(counter);
        await RepairAsync(counter);
        await ProveAsync(counter);
        await PayAsync(counter);
        await ComeBackAsync(counter, bench.Url);
    }

    [Fact]
    public async Task What_was_typed_stays_when_it_cannot_be_booked()
    {
        await using var bench = await BenchUnderTest.StartAsync([]);
        await using var someone = await chromium.SomeoneAsync();
        var counter = await CounterPerson.AtAsync(someone, bench.Url + "/book-in");
        await counter.FillAsync(
            ("in-name", "李 Ζωή"),
            ("in-phone", "٠٢٠ ٧٩٤٦"),
            ("in-model", "Tern 2"),
            ("in-limit", "-5"),
            ("in-promised", "2020-01-01")
        );
        await counter.FillAsync(("in-complaint", new string('x', 100_000)));

        await counter.Page.GetByRole(AriaRole.Button, new() { Name = "Book it in" }).ClickAsync();

        var said = counter.Page.Locator(".findings");
        await Expect(said).ToContainTextAsync("The complaint has 100000 characters.");
        await Expect(said).ToContainTextAsync("is past");
        await Expect(said).ToContainTextAsync("-5 will not do for the limit.");
        await Expect(counter.Page.Locator("#in-phone")).ToHaveValueAsync("٠٢٠ ٧٩٤٦");
        await Expect(counter.Page.Locator("#in-complaint")).ToHaveValueAsync(new string('x', 100_000));
    }

    private static async Task BookInAsync(CounterPerson counter)
    {
        await counter.FillAsync(
            ("in-name", "Ada Fenwick"),
            ("in-phone", "020 7946 0123"),
            ("in-maker", "Harrow & Pike"),
            ("in-model", "Tern 2"),
            ("in-serial", "HP-0417")
        );
        await counter.FillAsync(
            ("in-complaint", "dead after moving house"),
            ("in-limit", "100"),
            ("in-deposit", "50"),
            ("in-worth", "800")
        );
        await counter.Page.GetByRole(AriaRole.Button, new() { Name = "Book it in" }).ClickAsync();
        await Expect(counter.State).ToHaveTextAsync("booked in");
        await counter.SaysAsync("50.00 EUR");
    }

    /// <summary>Labour 60.00 and a rewind of 140.00 with 20 % tax: 240.00, above the limit of 100.00.</summary>
    private static async Task AgreeAsync(CounterPerson counter)
    {
        var quote = counter.Card("quote");
        await quote.GetByRole(AriaRole.Button, new() { Name = "Another line" }).ClickAsync();
        var row = quote.Locator("table.lines tbody tr").Nth(1);
        await row.GetByLabel("Kind").SelectOptionAsync("OutsideWork");
        await row.GetByLabel("What").FillAsync("Mains transformer, rewound");
        await row.GetByLabel("Price").FillAsync("-140");
        await row.GetByLabel("Weeks").FillAsync("3");
        await counter.PressAsync("quote", "Give the quote");
        await Expect(quote).ToContainTextAsync("Line 2 has a price of -140.");
        await Expect(row.GetByLabel("What")).ToHaveValueAsync("Mains transformer, rewound");
        await Expect(row.GetByLabel("Price")).ToHaveValueAsync("-140");
        await row.GetByLabel("Price").FillAsync("140");
        await counter.PressAsync("quote", "Give the quote");
        await Expect(counter.State).ToHaveTextAsync("awaiting the customer");
        await Expect(quote).ToContainTextAsync("comes to 240.00 EUR, above the limit of 100.00 EUR");
        await counter.Card("quote").GetByLabel("Answer", new() { Exact = true }).SelectOptionAsync("repair");
        await counter.PressAsync("quote", "Take the answer down");
        await Expect(quote).ToContainTextAsync("Accepted: repair");
    }

    private static async Task RepairAsync(CounterPerson counter)
    {
        await counter.OpenAsync("parts", "Order parts");
        await counter.FillAsync(
            ("order-supplier", "Invented Winder"),
            ("order-part", "rewind T1"),
            ("order-price", "-80"),
            ("order-freight", "12")
        );
        await counter.PressAsync("parts", "Ordered");
        await Expect(counter.Card("parts")).ToContainTextAsync("A piece cannot cost -80.");
        await Expect(counter.Page.Locator("#order-part")).ToHaveValueAsync("rewind T1");
        await Expect(counter.Page.Locator("#order-price")).ToHaveValueAsync("-80");
        await counter.FillAsync(("order-price", "80"));
        await counter.PressAsync("parts", "Ordered");
        await Expect(counter.State).ToHaveTextAsync("awaiting parts");
        var late = await counter.Page.EvaluateAsync<string>("() => new Date(Date.now() - 864e5).toISOString().slice(0, 10)");
        await counter.Card("parts").GetByLabel("What they said").FillAsync("should have been there yesterday");
        await counter.Card("parts").GetByLabel("Day they name now").FillAsync(late);
        await counter.PressAsync("parts", "Chased");
        await Expect(counter.Card("parts").Locator(".late")).ToHaveTextAsync("late");
        await counter.PressAsync("parts", "All of the rest came");
        await Expect(counter.State).ToHaveTextAsync("on the bench");
        await counter.FillAsync(("hours-what", "fitting T1"), ("hours-minutes", "50"));
        await counter.PressAsync("hours", "Enter the minutes");
        await Expect(counter.Card("hours")).ToContainTextAsync("charged 1 h");
    }

    private static async Task ProveAsync(CounterPerson counter)
    {
        await counter.PressAsync("handover", "Mark it ready");
        await Expect(counter.Card("handover")).ToContainTextAsync("There is no safety test on record.");
        await counter.TestAsync("0.9");
        await Expect(counter.Card("safety")).ToContainTextAsync("FAILED: earth bond");
        await counter.PressAsync("handover", "Mark it ready");
        await Expect(counter.Card("handover")).ToContainTextAsync("The last safety test failed: earth bond.");
        await counter.TestAsync("0.12");
        await Expect(counter.Card("safety")).ToContainTextAsync("passed");
        await counter.FillAsync(
            ("report-found", "Primary of T1 open"),
            ("report-done", "T1 rewound"),
            ("report-why", "Nothing reached the rectifier")
        );
        await counter.PressAsync("report", "Write the report");
        await counter.SaysAsync("Primary of T1 open");
        await counter.PressAsync("handover", "Mark it ready");
        await Expect(counter.State).ToHaveTextAsync("ready to collect");
    }

    private static async Task PayAsync(CounterPerson counter)
    {
        await counter.PressAsync("invoice", "As agreed");
        await counter.PressAsync("invoice", "Issue the invoice");
        await Expect(counter.Card("invoice")).ToContainTextAsync("Invoice 1, 240.00 EUR");
        await Expect(counter.Page.Locator("#balance")).ToHaveTextAsync("190.00 EUR");
        await counter.FillAsync(("money-amount", "190"));
        await counter.PressAsync("money", "Taken");
        await Expect(counter.Page.Locator("#balance")).ToHaveTextAsync("0.00 EUR");
        await counter.PressAsync("handover", "Handed over");
        await Expect(counter.State).ToHaveTextAsync("handed over");
        await counter.Page.ScreenshotAsync(new() { Path = Path.Combine(Pictures, "papers-1440-Light.png"), FullPage = true });
        foreach (var paper in new[] { "receipt", "label", "report", "invoice-1" })
        {
            var answer = await counter.Page.APIRequest.GetAsync($"{counter.Page.Url}/{paper}.pdf");
            Assert.Equal("application/pdf", answer.Headers["content-type"]);
            Assert.StartsWith(
                "%PDF",
                System.Text.Encoding.ASCII.GetString((await answer.BodyAsync())[..8]),
                StringComparison.Ordinal
            );
        }
    }

    private static async Task ComeBackAsync(CounterPerson counter, string url)
    {
        await counter.GoAsync(url + "/book-in");
        await counter.Page.Locator("#book-search").PressSequentiallyAsync("fenwick tern");
        await counter.Page.GetByRole(AriaRole.Button, new() { Name = "This unit again" }).ClickAsync();
        await Expect(counter.Page.Locator("#in-serial")).ToHaveValueAsync("HP-0417");
        await counter.FillAsync(("in-complaint", "hums now"));
        await counter.Page.GetByRole(AriaRole.Button, new() { Name = "Book it in" }).ClickAsync();
        await Expect(counter.Card("memory")).ToContainTextAsync("the warranty on that work holds until");
    }
}
