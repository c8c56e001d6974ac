using Slowglow.Tests.Workshop.Pricing;
using Slowglow.Workshop.Accounts;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Labour;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Orders;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Pricing;
using Slowglow.Workshop.Safety;
using Slowglow.Workshop.Timeline;
using Xunit;

namespace Slowglow.Tests.Workshop.Jobs;

/// <summary>Where a job stands follows from its timeline.</summary>
public sealed class JobDealingsTests
{
    private static readonly DateTimeOffset Start = new(2026, 11, 2, 9, 0, 0, TimeSpan.Zero);
    private static readonly DateOnly Day = new(2026, 11, 2);

    [Fact]
    public void State_follows_what_happens_from_the_counter_to_the_counter()
    {
        TimelineEntry[] all =
        [
            new BookedIn { Complaint = "dead" },
            new TimerStarted { What = new("bench", "looking") },
            new QuoteGiven { What = Quote() },
            new QuoteAnswered { What = new(3, "repair", "Ada", Way.Telephone, "go ahead") },
            new PartsOrdered { What = Order(2, 1) },
            new PartsArrived { What = new(5, [1, 1]) },
            new PartsArrived { What = new(5, [1, 0]) },
            new MarkedReady { What = new("tested elsewhere", "shelf 2") },
            new HandedOver { What = new("Ada", "lead", null) },
        ];
        JobState[] states =
        [
            JobState.BookedIn,
            JobState.OnTheBench,
            JobState.AwaitingCustomer,
            JobState.OnTheBench,
            JobState.AwaitingParts,
            JobState.AwaitingParts,
            JobState.OnTheBench,
            JobState.ReadyToCollect,
            JobState.HandedOver,
        ];
        for (var n = 1; n <= all.Length; n++)
        {
            Assert.Equal(states[n - 1], StateRules.After(Placed(all[..n])));
        }
    }

    [Fact]
    public void Struck_entry_counts_no_more_and_what_it_did_is_undone()
    {
        TimelineEntry[] all =
        [
            new BookedIn { Complaint = "dead" },
            new MoneyTaken { What = Pay(50) },
            new MarkedReady { What = new("no reason worth it", "") },
            new EntryStruck { What = new(3, "wrong job") },
            new EntryStruck { What = new(2, "typed twice") },
        ];
        var dealings = JobDealings.After(Placed(all));

        Assert.Equal(0, dealings.Account("EUR").Paid.Figure);
        Assert.Null(dealings.ReadySince);
        Assert.Equal(JobState.BookedIn, StateRules.After(Placed(all)));
    }

    [Fact]
    public void Entry_that_others_lean_on_cannot_be_struck_out_before_them()
    {
        var entries = Placed([
            new BookedIn { Complaint = "dead" },
            new QuoteGiven { What = Quote() },
            new QuoteAnswered { What = new(2, null, "Ada", Way.Mail, "") },
        ]);

        Assert.Contains("3", Assert.Single(Striking.Look(entries, new(2, "typo"))).Remedy, StringComparison.Ordinal);
        Assert.Empty(Striking.Look(entries, new(3, "misheard")));
        Assert.NotEmpty(Striking.Look(entries, new(3, " ")));
        Assert.NotEmpty(Striking.Look(entries, new(1, "all of it")));
        Assert.NotEmpty(Striking.Look(entries, new(9, "what?")));
    }

    /// <summary>Invoice 120.00, deposit 50.00, credit note 30.00: 40.00 to pay. 60.00 come: 20.00 too much; given back: nothing.</summary>
    [Fact]
    public void Account_of_a_part_payment_with_a_credit_note()
    {
        List<TimelineEntry> all =
        [
            new MoneyTaken { What = Pay(50) },
            new PaperIssued { What = new(PaperKind.Invoice, 1, Eur(120), null) },
            new PaperIssued { What = new(PaperKind.CreditNote, 1, Eur(30), 1) },
        ];
        Assert.Equal(Eur(40), Balance());
        all.Add(new MoneyTaken { What = Pay(60) });
        Assert.Equal(Eur(-20), Balance());
        all.Add(new MoneyReturned { What = Pay(20) });
        Assert.Equal(Eur(0), Balance());

        Amount Balance() => JobDealings.After(Placed([.. all])).Account("EUR").Balance;
    }

    [Fact]
    public void Timer_runs_until_its_hours_are_entered()
    {
        TimelineEntry[] running = [new TimerStarted { What = new("bench", "looking") }];
        TimelineEntry[] stopped = [.. running, new HoursWorked { What = new Worked("bench", 42, "looking", 1) }];

        Assert.Equal(Start.AddMinutes(1), Assert.Single(JobDealings.After(Placed(running)).Timers).Since);
        Assert.Empty(JobDealings.After(Placed(stopped)).Timers);
    }

    [Fact]
    public void Order_knows_its_last_promise_and_when_it_is_late()
    {
        var order = Assert.Single(
            JobDealings
                .After(
                    Placed([
                        new PartsOrdered { What = Order(2) with { Promised = Day } },
                        new OrderChased { What = new(1, "next week", Day.AddDays(7), "TRACK-1") },
                        new PartsArrived { What = new(1, [1]) },
                    ])
                )
                .Orders
        );

        Assert.Equal((Day.AddDays(7), "TRACK-1", false), (order.Promised, order.Tracking, order.IsComplete));
        Assert.False(order.IsLate(Day.AddDays(7)));
        Assert.True(order.IsLate(Day.AddDays(8)));
    }

    [Fact]
    public void Unit_without_a_passed_test_is_ready_only_with_a_written_reason()
    {
        var figure = new SafetyFigure(SafetyTests.Earth, 0.5, "ohm", false, 0.3, "x");
        var failed = new SafetyTest("set", "I", [figure], true, true, "tester 7", null, "Ada", Day);
        var untested = JobDealings.After([]);
        var tested = JobDealings.After(Placed([new SafetyTested { What = failed }]));
        var passed = JobDealings.After(
            Placed([
                new SafetyTested { What = failed },
                new SafetyTested { What = failed with { Figures = [figure with { Value = 0.1 }] } },
            ])
        );

        Assert.Contains("no safety test", Assert.Single(ReadyRule.LookReady(untested, "")).Text, StringComparison.Ordinal);
        Assert.Contains("earth bond", Assert.Single(ReadyRule.LookReady(tested, "")).Text, StringComparison.Ordinal);
        Assert.NotEmpty(ReadyRule.LookReady(tested, "because"));
        Assert.Empty(ReadyRule.LookReady(tested, "battery unit, no mains part"));
        Assert.Empty(ReadyRule.LookReady(passed, ""));
    }

    [Theory]
    [InlineData(0, "EUR")]
    [InlineData(-5, "EUR")]
    [InlineData(5, "USD")]
    [InlineData(5.001, "EUR")]
    public void Payment_that_cannot_be_is_refused(decimal figure, string currency) =>
        Assert.Single((Pay(1) with { Amount = new(figure, currency) }).Look("EUR"));

    private static Amount Eur(decimal figure) => new(figure, "EUR");

    private static Payment Pay(decimal figure) => new(Eur(figure), PaidBy.Cash, PaidFor.Deposit, Day, "");

    private static Quote Quote() =>
        new([new("repair", PriceList.Work([Rates.Part(1, 100)], Rates.Exclusive(), Rates.Table, Day))], Day, Day, "");

    private static PartsOrder Order(params int[] pieces) =>
        new("Invented Valve Supply", "EUR", 1, 0, [.. pieces.Select(p => new OrderLine("part", p, 1))], null, "", true);

    private static List<TimelineEntry> Placed(TimelineEntry[] entries)
    {
        for (var i = 0; i < entries.Length; i++)
        {
            entries[i].Place(1001, i + 1, Start.AddMinutes(i + 1), null);
        }

        return [.. entries];
    }
}
