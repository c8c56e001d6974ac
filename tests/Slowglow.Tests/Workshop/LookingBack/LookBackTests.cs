using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.LookingBack;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Pricing;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Tests.Workshop.LookingBack;

/// <summary>Every figure here was worked out by hand.</summary>
public sealed class LookBackTests
{
    private static readonly DateTimeOffset Start = new(2026, 3, 2, 12, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Job_waits_for_each_in_turn_and_the_days_add_up_to_its_stay()
    {
        // Two days with us, three for the answer, four for the part, one with us, five on the shelf.
        var job = Closed(
            (0, new BookedIn { Complaint = "hums" }),
            (2, new QuoteGiven { What = new([], new(2026, 3, 4), new(2026, 4, 4), "") }),
            (5, new QuoteAnswered { What = new(2, "repair", "Ada", Way.Mail, "") }),
            (5, new PartsOrdered { What = new("Invented Iron", "EUR", 1, 0, [new("choke", 1, 30)], null, "", true) }),
            (9, new PartsArrived { What = new(4, [1]) }),
            (9, new HoursWorked { What = new("bench", 90, "", null) }),
            (10, new PartFitted { What = new("choke", 1, 30, 45, "") }),
            (10, new MarkedReady { What = new("", "") }),
            (15, new HandedOver { What = new("Ada", "", null) })
        )!;

        Assert.Equal(
            (2d + 1, 3d, 4d, 5d),
            (job.Waited[WaitsFor.Us], job.Waited[WaitsFor.Customer], job.Waited[WaitsFor.Parts], job.Waited[WaitsFor.Collection])
        );
        // Ready on the tenth day, promised for the eighth: two late. Invoice 1.5 h at 60 and 45, credit note 30 of the labour: 105 net, half an hour back.
        Assert.Equal(
            (2, 90, 1.0m, 105m, 30m, 75m),
            (job.DaysLate, job.Minutes, job.ChargedHours, job.Net, job.PartsCost, job.Earned)
        );
        Assert.Null(Closed((0, new BookedIn { Complaint = "hums" })));
    }

    [Fact]
    public void Months_leave_jobs_without_hours_out_and_say_so()
    {
        var back = LookBack.Over(
            [
                Job(1, new(2026, 2, 3), 60, 70, 0),
                Job(2, new(2026, 2, 20), 120, 140, 3),
                Job(3, new(2026, 2, 21), 0, 500, 9),
                Job(4, new(2026, 4, 1), 60, -10, null),
            ],
            new(2026, 2, 1),
            new(2026, 4, 30)
        );

        Assert.Equal([70m, null, -10m], back.Months.Select(m => m.PerHour));
        Assert.Equal([(3, 1), (0, 0), (1, 0)], back.Months.Select(m => (m.Jobs, m.WithoutHours)));
        Assert.Equal([1, 1, 0, 1, 0], back.Promises.Select(p => p.Jobs));
        Assert.Equal(1, back.WithoutPromise);
    }

    [Fact]
    public void Mean_median_and_slowest_tenth_are_those_of_the_sample()
    {
        // 0 to 10 days: mean 5, median 5, nine tenths of the way 9 (type 7 of Hyndman and Fan: 1 + 0.9 x 10 = 10th of 11).
        var jobs = Enumerable.Range(0, 11).Select(d => Job(d, new(2026, 2, 3), 60, 0, null, d)).ToList();
        var us = LookBack.Over(jobs, new(2026, 2, 1), new(2026, 2, 28)).Waits.Single(w => w.For == WaitsFor.Us);
        Assert.Equal((5, 5, 9), (us.Mean, us.Median, us.Slowest), new Close());
    }

    private static ClosedJob Job(int number, DateOnly day, int minutes, decimal net, int? late, double us = 0) =>
        new(number, day, minutes, 0, net, 0, new Dictionary<WaitsFor, double> { [WaitsFor.Us] = us }, late);

    private static ClosedJob? Closed(params (int Day, TimelineEntry Entry)[] entries)
    {
        foreach (var ((day, entry), i) in entries.Select((e, i) => (e, i)))
        {
            entry.Place(1, i + 1, Start.AddDays(day), null);
        }

        var rule = new PricingRule("EUR", false, TaxRounding.PerDocument);
        var taxes = new TaxTable([new("standard", 20, new(2020, 1, 1))]);
        Paper Of(PaperKind kind, params ChargeLine[] lines)
        {
            var nobody = new Party("", "", "", "");
            return new(
                kind,
                1,
                1,
                new(2026, 3, 12),
                nobody,
                nobody,
                "",
                PriceList.Work(lines, rule, taxes, new(2026, 3, 12)),
                [],
                ""
            );
        }

        return ClosedJob.Of(
            1,
            entries.Select(e => e.Entry),
            [
                Of(
                    PaperKind.Invoice,
                    new(LineKind.Labour, "Labour", 1.5m, 60, "standard"),
                    new(LineKind.Part, "choke", 1, 45, "standard")
                ),
                Of(PaperKind.CreditNote, new ChargeLine(LineKind.Labour, "Labour", 0.5m, 60, "standard")),
            ],
            Start.AddDays(8),
            at => DateOnly.FromDateTime(at.UtcDateTime)
        );
    }

    private sealed class Close : IEqualityComparer<(double, double, double)>
    {
        public bool Equals((double, double, double) x, (double, double, double) y) =>
            Math.Abs(x.Item1 - y.Item1) + Math.Abs(x.Item2 - y.Item2) + Math.Abs(x.Item3 - y.Item3) < 1e-9;

        public int GetHashCode((double, double, double) obj) => 0;
    }
}
