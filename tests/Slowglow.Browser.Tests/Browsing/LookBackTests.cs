using Deque.AxeCore.Playwright;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using Slowglow.Storage;
using Slowglow.Storage.Records;
using Slowglow.Workshop.Accounts;
using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Pricing;
using Slowglow.Workshop.Timeline;
using Slowglow.Workshop.Units;
using static Microsoft.Playwright.Assertions;

namespace Slowglow.Browser.Tests.Browsing;

/// <summary>The page of four charts, over an invented year.</summary>
public sealed class LookBackTests(Chromium chromium)
{
    private const int Jobs = 60;

    [Theory]
    [InlineData(1440, ColorScheme.Light)]
    [InlineData(820, ColorScheme.Dark)]
    public async Task Four_charts_with_their_tables_fit_and_are_free_of_accessibility_faults(int width, ColorScheme scheme)
    {
        await using var bench = await BenchUnderTest.StartAsync([]);
        await FillAsync(bench.Services.GetRequiredService<IDbContextFactory<ShopDatabase>>());
        await using var someone = await chromium.SomeoneAsync(width, scheme);
        var person = await BenchPerson.AtAsync(someone, bench.Url + "/looking-back");

        await Expect(person.Page.Locator("svg.bars")).ToHaveCountAsync(4);
        await Expect(person.Page.Locator(".chart table")).ToHaveCountAsync(4);
        await Expect(person.Page.GetByText($"From {Jobs} jobs that went home.")).ToBeVisibleAsync();
        await LooksTests.LookAsync(person, $"looking-back-{width}-{scheme}");
        var found = await person.Page.RunAxe();
        Assert.Empty(
            found.Violations.Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(4).Select(n => n.Html))}")
        );

        await person.Page.Locator("#back-months").SelectOptionAsync("3");
        await Expect(person.Page.Locator("#perhour-title ~ .scroll tbody tr")).ToHaveCountAsync(3);
    }

    private static async Task FillAsync(IDbContextFactory<ShopDatabase> shop)
    {
        await using var database = await shop.CreateDbContextAsync(TestContext.Current.CancellationToken);
        var now = DateTimeOffset.UtcNow;
        for (var i = 0; i < Jobs; i++)
        {
            // Spread over the year, each with a stay of its own; nothing random, so that the picture is the same every time.
            var home = now.AddDays(-2 - i * 5.5);
            var days = 6 + i * 7 % 40;
            database.Jobs.Add(Job(i + 1, home.AddDays(-days), home, days, i));
            database.Papers.Add(Invoice(i + 1, DateOnly.FromDateTime(home.Date), 1 + i % 4));
        }

        await database.SaveChangesAsync(TestContext.Current.CancellationToken);
        await BoardUpkeep.RunAsync(database, TestContext.Current.CancellationToken);
    }

    private static Job Job(int number, DateTimeOffset came, DateTimeOffset home, int days, int i)
    {
        TimelineEntry[] entries =
        [
            new BookedIn { Complaint = "hums" },
            new StateChanged { State = JobState.AwaitingCustomer },
            new StateChanged { State = JobState.AwaitingParts },
            new HoursWorked { What = new("bench", i % 9 == 0 ? 1 : 40 + i * 13 % 150, "repair", null) },
            new PartFitted { What = new("EL84", 1 + i % 2, 11.5m, 17.25m, "bin A3") },
            new MarkedReady { What = new("", "shelf 2") },
            new HandedOver { What = new("Ada", "", null) },
        ];
        double[] when = [0, 0.15, 0.25, 0.6, 0.6, 0.8, 1];
        foreach (var (entry, share) in entries.Zip(when))
        {
            entry.Place(number, Array.IndexOf(entries, entry) + 1, came.AddDays(days * share), null);
        }

        return new()
        {
            Number = number,
            Customer = new Customer { Name = $"Invented {number}" },
            Unit = new UnitOnBench("Harrow & Pike", "Tern 2", $"HP-{number}", 230),
            BookedIn = came,
            Promised = i % 5 == 0 ? null : came.AddDays(days * 0.8 - i % 7 + 2),
            Timeline = [.. entries],
        };
    }

    private static KeptPaper Invoice(int number, DateOnly day, int hours)
    {
        ChargeLine[] lines =
        [
            new(LineKind.Labour, "Labour", hours, 60, "standard"),
            new(LineKind.Part, "EL84", 1, 17.25m, "standard"),
        ];
        var priced = PriceList.Work(
            lines,
            new("EUR", false, TaxRounding.PerDocument),
            new([new("standard", 20, new(2020, 1, 1))]),
            day
        );
        var party = new Party("Invented", "", "", "");
        return new()
        {
            Kind = PaperKind.Invoice,
            Number = number,
            JobNumber = number,
            Day = day.DayNumber,
            Paper = new(PaperKind.Invoice, number, number, day, party, party, "Tern 2", priced, Array.Empty<Payment>(), ""),
        };
    }
}
