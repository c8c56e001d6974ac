using Slowglow.Storage.Records;
using Slowglow.Workshop.Accounts;
using Slowglow.Workshop.Customers;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Pricing;
using Slowglow.Workshop.Timeline;
using Slowglow.Workshop.Units;

namespace Slowglow.Storage.Tests;

/// <summary>An invented job with an entry of every kind.</summary>
internal static class Sample
{
    public static readonly DateTimeOffset Monday = new(2026, 11, 2, 9, 30, 15, 250, TimeSpan.Zero);

    public static Job Job(int number, DateTimeOffset? bookedIn = null) =>
        new()
        {
            Number = number,
            Customer = new Customer { Name = "Ada Fenwick", Contact = "by letter" },
            Unit = new UnitOnBench("Harrow & Pike", "Tern 2", "HP-0417", 230),
            Sheet = new DrawnSheet
            {
                Title = "Harrow & Pike Tern 2",
                Text = "sheet: 1\nunit: Tern 2\n",
                AddedAt = Monday,
            },
            BookedIn = bookedIn ?? Monday,
            Promised = Monday.AddDays(14),
            Limit = new Amount(199.95m, "EUR"),
            Timeline = [.. EveryKind(number)],
        };

    public static KeptPaper Paper(int job, int number)
    {
        var day = new DateOnly(2026, 11, 2);
        var line = new ChargeLine(LineKind.Fee, "Bench fee", 1, 45, "standard");
        var priced = PriceList.Work([line], new("EUR", true, TaxRounding.PerDocument), new([new("standard", 20, day)]), day);
        var shop = new Party("Invented Bench", "1 Lane", "000", "T 1");
        return new()
        {
            Kind = PaperKind.Invoice,
            Number = number,
            JobNumber = job,
            Day = day.DayNumber,
            Paper = new(PaperKind.Invoice, number, job, day, shop, shop, "Tern 2", priced, [], "terms"),
        };
    }

    public static IEnumerable<TimelineEntry> EveryKind(int number)
    {
        yield return new BookedIn
        {
            JobNumber = number,
            Sequence = 1,
            At = Monday,
            Complaint = "thin and gritty",
        };
        yield return new SetupDescribed
        {
            JobNumber = number,
            Sequence = 2,
            At = Monday,
            Name = "slow",
            Keys = "mains: 110 V",
        };
        yield return new SetupChosen
        {
            JobNumber = number,
            Sequence = 3,
            At = Monday,
            Setup = "slow",
        };
        yield return new ReadingTaken
        {
            JobNumber = number,
            Sequence = 4,
            At = Monday,
            Line = "V1.6 = 62 V",
            Setup = "slow",
        };
        yield return new ReadingTaken
        {
            JobNumber = number,
            Sequence = 5,
            At = Monday,
            Line = "HT1 = 280 V",
            Setup = "slow",
        };
        yield return new ReadingWithdrawn
        {
            JobNumber = number,
            Sequence = 6,
            At = Monday,
            Reading = 4,
        };
        yield return new ComplaintChanged
        {
            JobNumber = number,
            Sequence = 7,
            At = Monday,
            Complaint = "thin, first channel",
        };
        yield return new StateChanged
        {
            JobNumber = number,
            Sequence = 8,
            At = Monday,
            State = JobState.AwaitingParts,
        };
        yield return new NoteWritten
        {
            JobNumber = number,
            Sequence = 9,
            At = Monday,
            Text = "lead replaced before",
        };
    }

    /// <summary>An entry of every kind that carries a record, from the tenth place on.</summary>
    public static IReadOnlyList<TimelineEntry> WithRecords(int number)
    {
        var day = new DateOnly(2026, 11, 2);
        var line = new ChargeLine(LineKind.Labour, "Labour", 1.5m, 60.00m, "standard", 2);
        var priced = PriceList.Work([line], new("EUR", false, TaxRounding.PerLine), new([new("standard", 20, day)]), day);
        TimelineEntry[] all =
        [
            new CallNoted { What = new(Way.Telephone, "Ada", "asks when") },
            new QuoteGiven { What = new([new("repair", priced)], day, day.AddDays(30), "as it was") },
            new QuoteAnswered { What = new(11, "repair", "Ada", Way.Mail, "yes, go on") },
            new LimitChanged { What = new(new Amount(300, "EUR"), "Ada", Way.Counter) },
            new PromiseChanged { What = new(day.AddDays(20), "the choke is late") },
            new PartNeeded { What = new("choke 5 H", 1, "open") },
            new PartsOrdered { What = new("Invented Iron", "USD", 0.92m, 12.5m, [new("choke 5 H", 2, 26.1m)], day, "", true) },
            new OrderChased { What = new(16, "next week", day.AddDays(7), "T-1") },
            new PartsArrived { What = new(16, [2]) },
            new PartFitted { What = new("choke 5 H", 1, 30.15m, 45.25m, "bin 4") },
            new TimerStarted { What = new("bench", "fitting") },
            new HoursWorked { What = new("bench", 42, "fitting", 20) },
            new SafetyTested
            {
                What = new("set", "I", [new("earth bond", 0.12, "ohm", false, 0.3, "S")], true, true, "T7", day, "Ada", day),
            },
            new MoneyTaken { What = new(new Amount(50.01m, "EUR"), PaidBy.Card, PaidFor.Deposit, day, "") },
            new MoneyReturned { What = new(new Amount(0.01m, "EUR"), PaidBy.Cash, PaidFor.Deposit, day, "a cent") },
            new PaperIssued { What = new(PaperKind.Invoice, 1, new Amount(108, "EUR"), null) },
            new ReportWritten { What = new("choke open", "no HT", "fitted", "", [new("HT1, DC", "0 V", "310 V")], 6) },
            new MarkedReady { What = new("", "shelf 2") },
            new OwnerReminded { What = new(Way.Letter, "Ada", "it is ready") },
            new PhotoAdded { What = new("ab12.jpg", "the back", 1234) },
            new SheetAttached { What = new(1, "Tern 2") },
            new HandedOver { What = new("Ada", "lead", day.AddMonths(6)) },
            new SuspectsNoted { What = new(3, [new("R10 drifted up", 0.93)], 0.001, 0.04) },
            new EntryStruck { What = new(10, "another job") },
        ];
        for (var i = 0; i < all.Length; i++)
        {
            all[i].Place(number, 10 + i, Monday.AddMinutes(i), i % 2 == 0 ? "Bea" : null);
        }

        return all;
    }
}
