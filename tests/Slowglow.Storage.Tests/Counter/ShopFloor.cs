using Microsoft.EntityFrameworkCore;
using Slowglow.Bench.Counter;
using Slowglow.Bench.Jobs;
using Slowglow.Bench.Papers;
using Slowglow.Workshop.Accounts;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Pricing;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Storage.Tests.Counter;

/// <summary>The use cases of the counter over a shop, as one bench runs them.</summary>
internal sealed class ShopFloor(IDbContextFactory<ShopDatabase> shop, TimeProvider? clock = null)
{
    private readonly TimeProvider clock = clock ?? TimeProvider.System;

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public JobNews News { get; } = new();

    public JobLedger Ledger => new(shop, clock, News);

    public EnterOnTimeline Enter => new(Ledger);

    public DateOnly Today => ShopDay.Today(clock);

    public static Booking Booking =>
        new(
            null,
            "Ada Fenwick",
            "+44 (0)20 7946-0123",
            "",
            "",
            "Harrow & Pike",
            "Tern 2",
            "HP-0417",
            230,
            "hums even with the volume down",
            "",
            "",
            "",
            "lead",
            new(500, "EUR"),
            new(45, "EUR"),
            new(200, "EUR"),
            null,
            null,
            null
        );

    public static ChargeLine Line(decimal price) => new(LineKind.Labour, "Labour", 1, price, "standard");

    public async Task<int> BookAsync(Booking? booking = null)
    {
        var booked = await new BookIn(shop, clock, News).RunAsync(booking ?? Booking, cancel: Cancel);
        Assert.Empty(booked.Findings);
        return booked.Value!.Number;
    }

    public Task<Sheets.Parsed<TimelineEntry>> EnterAsync(int job, TimelineEntry entry, string? by = null) =>
        Enter.RunAsync(job, () => entry, by, Cancel);

    public async Task DoAsync(int job, TimelineEntry entry) => Assert.Empty((await EnterAsync(job, entry)).Findings);

    public Payment Pay(decimal figure) => new(new Amount(figure, "EUR"), PaidBy.Card, PaidFor.Repair, Today, "");

    public async Task<JobFile> FileAsync(int job) => (await new ReadJobFile(shop, clock).RunAsync(job, Cancel)).Value!;
}
