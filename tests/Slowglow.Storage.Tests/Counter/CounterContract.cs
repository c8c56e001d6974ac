using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Counter;
using Slowglow.Bench.Papers;
using Slowglow.Storage.Tests.Keeping;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Safety;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests.Counter;

/// <summary>A job from the counter to the counter, on every kind of database.</summary>
public abstract class CounterContract
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    protected abstract Task<IShopUnderTest> StartAsync();

    [Fact]
    public async Task Job_goes_from_booking_in_to_collected_and_paid()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync(ShopFloor.Booking with { Deposit = new(50, "EUR") });
        await floor.DoAsync(job, new CallNoted { What = new(Way.Telephone, "Ada", "asked what happened") });
        Assert.Empty(
            (await new GiveQuote(floor.Ledger).RunAsync(job, [("repair", [ShopFloor.Line(100)])], "", cancel: Cancel)).Findings
        );
        var quote = Assert.Single((await floor.FileAsync(job)).Dealings.Quotes);
        Assert.Equal(JobState.AwaitingCustomer, (await floor.FileAsync(job)).Standing.State);
        await floor.DoAsync(job, new QuoteAnswered { What = new(quote.Sequence, "repair", "Ada", Way.Mail, "yes") });
        await floor.DoAsync(
            job,
            new PartsOrdered { What = new("Iron", "EUR", 1, 5, [new("choke", 1, 20)], floor.Today, "", true) }
        );
        Assert.Equal(WaitsFor.Parts, Assert.Single(await new ReadBoard(under.Shop).RunAsync(Cancel)).WaitsFor);
        var order = Assert.Single((await floor.FileAsync(job)).Dealings.Orders);
        await floor.DoAsync(job, new PartsArrived { What = new(order.Sequence, [1]) });

        Assert.Contains(
            "no safety test",
            Only(await floor.EnterAsync(job, new MarkedReady { What = new("", "shelf") })),
            StringComparison.Ordinal
        );
        await floor.DoAsync(job, Tested(floor, 0.5));
        Assert.Contains(
            "earth bond",
            Only(await floor.EnterAsync(job, new MarkedReady { What = new("", "shelf") })),
            StringComparison.Ordinal
        );
        await floor.DoAsync(job, Tested(floor, 0.1));
        await floor.DoAsync(job, new ReportWritten { What = new("choke open", "no smoothing", "new choke", "", [], 6) });
        Assert.Empty(
            (
                await new IssueInvoice(floor.Ledger).RunAsync(
                    job,
                    Proposal.For((await floor.FileAsync(job)).Dealings, (await floor.FileAsync(job)).Rules),
                    cancel: Cancel
                )
            ).Findings
        );
        await floor.DoAsync(job, new MarkedReady { What = new("", "shelf") });
        await floor.DoAsync(job, new MoneyTaken { What = floor.Pay(70) });
        await floor.DoAsync(job, new HandedOver { What = new("Ada", "lead", floor.Today.AddMonths(6)) });

        var file = await floor.FileAsync(job);
        Assert.Equal((120m, 120m, 0m), (file.Account.Invoiced.Figure, file.Account.Paid.Figure, file.Account.Balance.Figure));
        Assert.Equal(70m, Assert.Single(file.Papers).ToPay.Figure);
        Assert.Empty(await new ReadBoard(under.Shop).RunAsync(Cancel));

        var again = await floor.BookAsync();
        var comeback = (await floor.FileAsync(again)).UnderWarranty;
        Assert.Equal((job, "choke open"), (comeback!.Number, comeback.Found));
    }

    [Theory]
    [InlineData("fenwick")]
    [InlineData("FENWICK tern")]
    [InlineData("020 7946 0123")]
    [InlineData("7946-0123")]
    [InlineData("hp-0417")]
    [InlineData("volume down")]
    [InlineData("1001")]
    [InlineData("٧٩٤٦")]
    public async Task One_box_finds_a_job_by_whatever_is_known(string typed)
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync();
        await floor.BookAsync(
            ShopFloor.Booking with
            {
                Name = "Somebody",
                Phone = "1",
                Maker = "Other",
                Model = "Box",
                Serial = "",
                Complaint = "dead",
            }
        );

        var found = await new SearchBook(under.Shop).RunAsync(typed, Cancel);

        Assert.Equal(job, Assert.Single(found.Jobs).JobNumber);
        Assert.Equal("Ada Fenwick", Assert.Single(found.Customers).Name);
    }

    [Fact]
    public async Task Unit_that_comes_back_with_another_owner_has_its_history_and_its_warranty()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var first = await floor.BookAsync();
        await floor.DoAsync(first, Tested(floor, 0.1));
        await floor.DoAsync(first, new ReportWritten { What = new("choke open", "no smoothing", "new choke", "", [], 6) });
        await floor.DoAsync(first, new MarkedReady { What = new("no charge", "shelf") });
        await floor.DoAsync(first, new HandedOver { What = new("Ada", "lead", floor.Today.AddMonths(6)) });

        var second = await floor.BookAsync(ShopFloor.Booking with { Name = "Wil Osei", Phone = "77", Serial = " hp-0417" });

        var file = await floor.FileAsync(second);
        Assert.Equal("Wil Osei", file.Job.Customer.Name);
        var visit = Assert.Single(file.SameUnit);
        Assert.Equal((first, "Ada Fenwick", "choke open"), (visit.Number, visit.Customer, visit.Found));
        Assert.Equal(first, file.UnderWarranty!.Number);
        Assert.Equal(2, (await new SearchBook(under.Shop).RunAsync("hp-0417", Cancel)).Jobs.Count);
    }

    [Fact]
    public async Task Timer_runs_on_while_the_program_is_closed()
    {
        await using var under = await StartAsync();
        var nine = new DateTimeOffset(2026, 11, 2, 9, 0, 0, TimeSpan.Zero);
        var floor = new ShopFloor(under.Shop, new FixedClock(nine));
        var job = await floor.BookAsync();
        await floor.DoAsync(job, new TimerStarted { What = new("bench", "looking for the hum") });

        var clock = new FixedClock(nine.AddMinutes(47).AddSeconds(10));
        var later = new ShopFloor(under.Reopened(), clock);
        var running = Assert.Single((await later.FileAsync(job)).Dealings.Timers);
        Assert.Equal(nine, running.Since);
        Assert.Empty((await new StopTimer(later.Ledger, clock).RunAsync(job, running.Sequence, cancel: Cancel)).Findings);

        var dealings = (await later.FileAsync(job)).Dealings;
        Assert.Empty(dealings.Timers);
        var worked = Assert.Single(dealings.Hours);
        Assert.Equal(("bench", 48, "looking for the hum"), (worked.Rate, worked.Minutes, worked.What));
        var again = await new StopTimer(later.Ledger, clock).RunAsync(job, running.Sequence, cancel: Cancel);
        Assert.Contains("stopped already", Assert.Single(again.Findings).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Promise_moves_to_a_day_to_come_and_never_into_the_past()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync();

        var past = await floor.EnterAsync(job, new PromiseChanged { What = new(floor.Today.AddDays(-1), "the choke is late") });
        Assert.Contains("is past", Only(past), StringComparison.Ordinal);
        Assert.Null((await floor.FileAsync(job)).Promised);

        await floor.DoAsync(job, new PromiseChanged { What = new(floor.Today.AddDays(9), "the choke is late") });
        Assert.Equal(floor.Today.AddDays(9), DateOnly.FromDateTime((await floor.FileAsync(job)).Promised!.Value.Date));
        await floor.DoAsync(job, new PromiseChanged { What = new(null, "nobody can say") });
        Assert.Null((await floor.FileAsync(job)).Promised);
    }

    /// <summary>Two weeks after: the example rules remind of collecting on the 14th day, and of a silent supplier after 7.</summary>
    [Fact]
    public async Task Board_says_whom_to_remind_once_the_days_are_over()
    {
        await using var under = await StartAsync();
        var monday = new DateTimeOffset(2026, 11, 2, 12, 0, 0, TimeSpan.Zero);
        var floor = new ShopFloor(under.Shop, new FixedClock(monday));
        var waiting = await floor.BookAsync();
        await floor.DoAsync(waiting, new PartsOrdered { What = new("Iron", "EUR", 1, 5, [new("choke", 1, 20)], null, "", true) });
        var ready = await floor.BookAsync();
        await floor.DoAsync(ready, new MarkedReady { What = new("goes back unrepaired", "shelf") });
        Assert.Empty(await new ReadReminders(under.Shop, new FixedClock(monday.AddDays(6))).RunAsync(Cancel));
        var after = new FixedClock(monday.AddDays(14));
        var reading = new ReadReminders(under.Shop, after);

        var due = await reading.RunAsync(Cancel);

        Assert.Equal([(waiting, "Iron"), (ready, "")], due.Select(d => (d.Card.JobNumber, d.Due.Whom)));
        var later = new ShopFloor(under.Shop, after);
        await later.DoAsync(ready, new OwnerReminded { What = new(Way.Telephone, "Ada", "reminded") });
        await later.DoAsync(waiting, new OrderChased { What = new(2, "next week", null, "") });
        Assert.Empty(await reading.RunAsync(Cancel));
    }

    [Fact]
    public async Task Booking_with_everything_wrong_is_told_everything_and_nothing_is_stored()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var wrong = ShopFloor.Booking with
        {
            Name = " ",
            Complaint = new string('x', 100_000),
            MainsVolts = 2,
            Limit = new(-5, "EUR"),
            Promised = floor.Today.AddDays(-1),
        };

        var booked = await new BookIn(under.Shop, TimeProvider.System, floor.News).RunAsync(wrong, cancel: Cancel);

        Assert.Equal(5, booked.Findings.Count);
        await using var database = under.Shop.CreateDbContext();
        Assert.False(await database.Jobs.AnyAsync(Cancel));
    }

    [Fact]
    public async Task Telephone_and_name_of_any_script_are_kept_and_found()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync(ShopFloor.Booking with { Name = "Ζωή Ŝarlot 李", Phone = "٠٢٠ ٧٩٤٦ ٩٩٩" });

        Assert.Equal("٠٢٠ ٧٩٤٦ ٩٩٩", (await floor.FileAsync(job)).Job.Customer.Contact);
        foreach (var typed in new[] { "ζωή", "李", "7946 999" })
        {
            Assert.Single((await new SearchBook(under.Shop).RunAsync(typed, Cancel)).Jobs);
        }
    }

    [Fact]
    public async Task Two_benches_at_one_job_lose_nothing_and_say_who_did_what()
    {
        await using var under = await StartAsync();
        var job = await new ShopFloor(under.Shop).BookAsync();
        var benches = new[] { ("Bea", under.Shop), ("Cy", under.Reopened()) };

        await Task.WhenAll(
            benches.Select(b =>
                Task.Run(
                    async () =>
                    {
                        var floor = new ShopFloor(b.Item2);
                        for (var n = 0; n < 20; n++)
                        {
                            Assert.Empty(
                                (await floor.EnterAsync(job, new NoteWritten { Text = $"{b.Item1} {n}" }, b.Item1)).Findings
                            );
                        }
                    },
                    Cancel
                )
            )
        );

        var timeline = (await new ShopFloor(under.Shop).FileAsync(job)).Job.Timeline.OrderBy(e => e.Sequence).ToList();
        Assert.Equal(Enumerable.Range(1, 41), timeline.Select(e => e.Sequence));
        foreach (var (who, _) in benches)
        {
            var own = timeline.OfType<NoteWritten>().Where(n => n.By == who).Select(n => n.Text);
            Assert.Equal(Enumerable.Range(0, 20).Select(n => $"{who} {n}"), own);
        }
    }

    [Fact]
    public async Task Invoices_issued_at_once_on_many_jobs_are_numbered_without_gaps()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        int[] jobs = [await floor.BookAsync(), await floor.BookAsync(), await floor.BookAsync()];

        await Task.WhenAll(
            jobs.Select(job =>
                Task.Run(
                    async () =>
                    {
                        for (var n = 0; n < 5; n++)
                        {
                            var issued = await new IssueInvoice(new ShopFloor(under.Shop).Ledger).RunAsync(
                                job,
                                [ShopFloor.Line(10 + n)],
                                cancel: Cancel
                            );
                            Assert.Empty(issued.Findings);
                        }
                    },
                    Cancel
                )
            )
        );

        await using var database = under.Shop.CreateDbContext();
        Assert.Equal(Enumerable.Range(1, 15), await database.Papers.Select(p => p.Number).OrderBy(n => n).ToListAsync(Cancel));
        Assert.Equal(15, await database.Timeline.OfType<PaperIssued>().CountAsync(Cancel));
    }

    [Fact]
    public async Task Refused_invoice_takes_no_number()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync();
        var issue = new IssueInvoice(floor.Ledger);

        Assert.NotEmpty((await issue.RunAsync(job, [ShopFloor.Line(-1)], cancel: Cancel)).Findings);
        Assert.NotEmpty((await issue.RunAsync(9, [ShopFloor.Line(1)], cancel: Cancel)).Findings);
        Assert.Equal(
            1,
            Assert.IsType<PaperIssued>((await issue.RunAsync(job, [ShopFloor.Line(1)], cancel: Cancel)).Value).What.Number
        );
    }

    /// <summary>100.00 + 20.00 tax; 40.00 of it back with 8.00 tax; the rest, 60.00 with 12.00.</summary>
    [Fact]
    public async Task Invoice_is_credited_in_parts_and_no_further()
    {
        await using var under = await StartAsync();
        var floor = new ShopFloor(under.Shop);
        var job = await floor.BookAsync();
        await new IssueInvoice(floor.Ledger).RunAsync(job, [ShopFloor.Line(100)], cancel: Cancel);
        var credit = new CreditInvoice(floor.Ledger);

        Assert.Contains("reason", Only(await credit.RunAsync(job, 1, null, " ", cancel: Cancel)), StringComparison.Ordinal);
        Assert.Empty((await credit.RunAsync(job, 1, [new(0, 40)], "goodwill", cancel: Cancel)).Findings);
        Assert.Empty((await credit.RunAsync(job, 1, null, "the rest", cancel: Cancel)).Findings);
        Assert.NotEmpty((await credit.RunAsync(job, 1, null, "again", cancel: Cancel)).Findings);

        var file = await floor.FileAsync(job);
        Assert.Equal([48m, 72m], file.Papers.Where(p => p.Kind == PaperKind.CreditNote).Select(p => p.Priced.Gross));
        Assert.Equal(0, file.Account.Balance.Figure);
    }

    private static SafetyTested Tested(ShopFloor floor, double ohms) =>
        new()
        {
            What = new(
                "set",
                "I",
                [new(SafetyTests.Earth, ohms, "ohm", false, 0.3, "S")],
                true,
                true,
                "T7",
                null,
                "Bea",
                floor.Today
            ),
        };

    private static string Only(Sheets.Parsed<TimelineEntry> refused) => Assert.Single(refused.Findings).Text;
}
