using Slowglow.Workshop.Collecting;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Shop;
using Slowglow.Workshop.Timeline;
using Xunit;

namespace Slowglow.Tests.Workshop.Collecting;

/// <summary>Days counted by hand from Monday, 2 March 2026.</summary>
public sealed class RemindingTests
{
    private static readonly DateTimeOffset Monday = new(2026, 3, 2, 10, 0, 0, TimeSpan.Zero);
    private static readonly ShopRules Rules = ExampleRules.Rules with { Storage = new(30, 1, 60, [14, 30]), ChaseDays = 7 };

    [Theory]
    [InlineData(13, 0, 0)]
    [InlineData(14, 0, 1)]
    [InlineData(14, 1, 0)]
    [InlineData(30, 1, 2)]
    [InlineData(400, 2, 0)]
    public void Customer_is_reminded_as_often_as_the_days_say(int days, int reminded, int number)
    {
        TimelineEntry[] timeline =
        [
            At(new MarkedReady { What = new("", "shelf") }, 1, 0),
            .. Enumerable
                .Range(2, reminded)
                .Select(n => At(new OwnerReminded { What = new(Way.Telephone, "Ada", "reminded") }, n, 3)),
        ];

        var due = Due(timeline, days);

        Assert.Equal(number, due.SingleOrDefault()?.Number ?? 0);
        Assert.All(due, d => Assert.Equal((ReminderKind.Collect, new DateOnly(2026, 3, 2)), (d.Kind, d.Since)));
    }

    [Theory]
    [InlineData(null, 6, false)]
    [InlineData(null, 7, true)]
    [InlineData(20, 19, false)]
    [InlineData(20, 20, false)]
    [InlineData(20, 21, true)]
    public void Supplier_is_asked_again_when_the_day_is_past_or_none_was_named(int? promised, int days, bool due)
    {
        DateOnly? day = promised is { } p ? new DateOnly(2026, 3, 2).AddDays(p) : null;

        var reminders = Due([At(Ordered(day), 1, 0)], days);

        Assert.Equal(due, reminders.Count > 0);
        Assert.All(reminders, r => Assert.Equal(("Invented Winder", "2 x rewind T1"), (r.Whom, r.Of)));
    }

    [Fact]
    public void Every_word_from_the_supplier_begins_the_silence_anew_and_the_rest_of_a_delivery_is_asked_for()
    {
        var chased = At(new OrderChased { What = new(1, "next week", null, "") }, 2, 8);
        var came = At(new PartsArrived { What = new(1, [1]) }, 3, 12);
        TimelineEntry[] timeline = [At(Ordered(null), 1, 0), chased, came];

        Assert.Empty(Due(timeline[..2], 14));
        Assert.Single(Due(timeline[..2], 15));
        Assert.Empty(Due(timeline, 18));
        Assert.Equal("1 x rewind T1", Assert.Single(Due(timeline, 19)).Of);
        Assert.Empty(Due([.. timeline, At(new PartsArrived { What = new(1, [1]) }, 4, 13)], 40));
    }

    [Fact]
    public void Nobody_is_chased_where_the_shop_does_not_want_it() =>
        Assert.Empty(Due([At(Ordered(null), 1, 0)], 300, Rules with { ChaseDays = 0 }));

    private static IReadOnlyList<DueReminder> Due(TimelineEntry[] timeline, int days, ShopRules? rules = null) =>
        Reminding.Due(
            JobDealings.After(timeline),
            rules ?? Rules,
            new DateOnly(2026, 3, 2).AddDays(days),
            time => DateOnly.FromDateTime(time.UtcDateTime)
        );

    private static PartsOrdered Ordered(DateOnly? promised) =>
        new() { What = new("Invented Winder", "EUR", 1, 0, [new("rewind T1", 2, 80)], promised, "", true) };

    private static TimelineEntry At(TimelineEntry entry, int sequence, int days)
    {
        entry.Place(1001, sequence, Monday.AddDays(days), null);
        return entry;
    }
}
