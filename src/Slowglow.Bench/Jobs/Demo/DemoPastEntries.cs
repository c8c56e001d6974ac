using Slowglow.Workshop.Accounts;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Shop;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Bench.Jobs.Demo;

/// <summary>The timeline of an invented job that went home.</summary>
internal sealed class DemoPastEntries(
    DemoTable table,
    string[] row,
    DateTimeOffset booked,
    DateTimeOffset ready,
    DateTimeOffset home
)
{
    private readonly List<(TimelineEntry Entry, DateTimeOffset At)> written = [];

    public IReadOnlyList<TimelineEntry> Write(int number, Paper paper, DateOnly day)
    {
        var (customer, parts) = (table.Whole(row, "customer"), table.Whole(row, "parts"));
        // What is left of the stay is the shop's own, half of it before anything is waited for.
        var looked = booked + ((ready - booked - TimeSpan.FromDays(customer + parts)) / 2);
        var agreed = looked.AddDays(customer);
        Add(booked, new BookedIn { Complaint = table.Text(row, "complaint") });
        if (customer > 0)
        {
            Add(looked, new StateChanged { State = JobState.AwaitingCustomer });
            Add(agreed, new StateChanged { State = JobState.OnTheBench });
        }

        Order(agreed, parts);
        Mend(ready, table.Whole(row, "minutes"));
        Add(ready, new MarkedReady { What = new("Tested; the figures are on paper.", "shelf 2") });
        Add(home, new PaperIssued { What = new(PaperKind.Invoice, paper.Number, paper.Priced.Total, null) });
        Add(home, new MoneyTaken { What = new(paper.ToPay, PaidBy.Card, PaidFor.Repair, day, "") });
        Add(home, new HandedOver { What = new(paper.Customer.Name, "lead", day.AddMonths(ExampleRules.Rules.WarrantyMonths)) });
        return [.. written.Select((w, i) => Placed(w.Entry, number, i + 1, w.At))];
    }

    private void Order(DateTimeOffset ordered, int days)
    {
        if (days == 0)
        {
            return;
        }

        var line = new Workshop.Orders.OrderLine(table.Text(row, "part"), table.Whole(row, "pieces"), table.Figure(row, "cost"));
        var sequence = written.Count + 1;
        Add(ordered, new PartsOrdered { What = new("Invented Iron", ExampleRules.Rules.Currency, 1, 0, [line], null, "", true) });
        Add(ordered.AddDays(days), new PartsArrived { What = new(sequence, [line.Quantity]) });
    }

    private void Mend(DateTimeOffset at, int minutes)
    {
        Add(at, new NoteWritten { Text = $"found: {table.Text(row, "found")}" });
        if (table.Whole(row, "pieces") is > 0 and var pieces)
        {
            Add(
                at,
                new PartFitted
                {
                    What = new(table.Text(row, "part"), pieces, table.Figure(row, "cost"), table.Figure(row, "price"), ""),
                }
            );
        }

        Add(at, new HoursWorked { What = new(ExampleRules.Rules.Labour[0].Name, minutes, "finding and mending", null) });
    }

    private void Add(DateTimeOffset at, TimelineEntry entry) => written.Add((entry, at));

    private static TimelineEntry Placed(TimelineEntry entry, int number, int sequence, DateTimeOffset at)
    {
        entry.Place(number, sequence, at, null);
        return entry;
    }
}
