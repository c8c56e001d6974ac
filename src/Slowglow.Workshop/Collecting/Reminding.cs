using System.Globalization;
using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Shop;

namespace Slowglow.Workshop.Collecting;

/// <summary>Who is to be reminded today, by the rules as they are today.</summary>
public static class Reminding
{
    /// <param name="dealings">Of one job.</param>
    /// <param name="day">The shop's day of a moment.</param>
    public static IReadOnlyList<DueReminder> Due(
        JobDealings dealings,
        ShopRules rules,
        DateOnly today,
        Func<DateTimeOffset, DateOnly> day
    ) =>
        [
            .. Collect(dealings, rules, today, day),
            .. dealings.Orders.Select(o => Chase(o, rules, today, day)).OfType<DueReminder>(),
        ];

    private static IEnumerable<DueReminder> Collect(
        JobDealings dealings,
        ShopRules rules,
        DateOnly today,
        Func<DateTimeOffset, DateOnly> day
    )
    {
        if (dealings.ReadySince is { } since && day(since) is var told && rules.Storage.Due(told, today) > dealings.Reminders)
        {
            yield return new(ReminderKind.Collect, "", "", told, dealings.Reminders + 1);
        }
    }

    /// <summary>Null when the supplier need not be asked today.</summary>
    public static DueReminder? Chase(OpenOrder order, ShopRules rules, DateOnly today, Func<DateTimeOffset, DateOnly> day)
    {
        var heard = day(order.Heard);
        return
            rules.ChaseDays > 0
            && !order.IsComplete
            && (order.Promised ?? DateOnly.MinValue) < today
            && today.DayNumber - heard.DayNumber >= rules.ChaseDays
            ? new(ReminderKind.Chase, order.Order.Supplier, Missing(order), heard, 1)
            : null;
    }

    private static string Missing(OpenOrder order) =>
        string.Join(
            ", ",
            order
                .Order.Lines.Zip(order.Came, (line, came) => (line.Part, Missing: line.Quantity - came))
                .Where(l => l.Missing > 0)
                .Select(l => string.Create(CultureInfo.InvariantCulture, $"{l.Missing} x {l.Part}"))
        );
}
