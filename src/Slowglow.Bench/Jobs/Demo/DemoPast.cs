using Slowglow.Bench.Papers;
using Slowglow.Storage;
using Slowglow.Storage.Records;
using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Pricing;
using Slowglow.Workshop.Shop;
using Slowglow.Workshop.Units;

namespace Slowglow.Bench.Jobs.Demo;

/// <summary>Invented jobs that went home in the last year, so that the charts have something to show. Their numbers end before those of the open ones.</summary>
internal sealed class DemoPast(ShopDatabase database, TimeProvider clock)
{
    private static readonly ShopRules Rules = ExampleRules.Rules;

    public async Task BookAsync(int before, CancellationToken cancel)
    {
        var table = await DemoTable.ReadAsync("gone-home.csv", cancel);
        var people = table
            .Rows.Select(r => table.Text(r, "customer name"))
            .Distinct()
            .ToDictionary(n => n, n => new Customer { Name = n });
        // Jobs are numbered as they came, invoices as they were issued.
        var came = table.Rows.OrderByDescending(r => table.Whole(r, "home") + table.Whole(r, "stay")).ToList();
        foreach (var (row, i) in table.Rows.OrderByDescending(r => table.Whole(r, "home")).Select((r, i) => (r, i)))
        {
            Book(table, row, people[table.Text(row, "customer name")], before - came.Count + came.IndexOf(row), i + 1);
        }
    }

    private void Book(DemoTable table, string[] row, Customer customer, int number, int paperNumber)
    {
        var home = clock.GetUtcNow().AddDays(-table.Whole(row, "home"));
        var booked = home.AddDays(-table.Whole(row, "stay"));
        var ready = home.AddDays(-table.Whole(row, "shelf"));
        var unit = new UnitOnBench(table.Text(row, "maker"), table.Text(row, "model"), table.Text(row, "serial"), 230);
        var paper = Invoice(table, row, customer, unit, number, paperNumber, ShopDay.Of(home, clock));
        var past = new DemoPastEntries(table, row, booked, ready, home);
        database.Jobs.Add(
            new()
            {
                Number = number,
                Customer = customer,
                Unit = unit,
                BookedIn = booked,
                Promised = table.Text(row, "late").Length == 0 ? null : ready.AddDays(-table.Whole(row, "late")),
                Timeline = [.. past.Write(number, paper, ShopDay.Of(home, clock))],
            }
        );
        database.Papers.Add(
            new KeptPaper
            {
                Kind = PaperKind.Invoice,
                Number = paperNumber,
                JobNumber = number,
                Day = paper.Day.DayNumber,
                Paper = paper,
            }
        );
    }

    private static Paper Invoice(
        DemoTable table,
        string[] row,
        Customer customer,
        UnitOnBench unit,
        int job,
        int number,
        DateOnly day
    )
    {
        List<ChargeLine> lines =
        [
            new(LineKind.Labour, "Finding and mending", table.Figure(row, "charged"), Rules.Labour[0].PerHour, Rules.UsualTax),
        ];
        if (table.Whole(row, "pieces") > 0)
        {
            lines.Add(
                new(
                    LineKind.Part,
                    table.Text(row, "part"),
                    table.Figure(row, "pieces"),
                    table.Figure(row, "price"),
                    Rules.UsualTax
                )
            );
        }

        return new(
            PaperKind.Invoice,
            number,
            job,
            day,
            Rules.Party,
            CustomerParty.Of(customer),
            $"{unit.Title}, serial {unit.Serial}",
            PriceList.Work(lines, Rules.Pricing, Rules.Taxes, day),
            [],
            Rules.InvoiceTerms
        );
    }
}
