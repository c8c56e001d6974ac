using Slowglow.Workshop;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Shop;

namespace Slowglow.Bench.Counter;

/// <summary>Looks a booking over.</summary>
internal static class BookingCheck
{
    private const int LongestComplaint = 4000;
    private const int LongestNote = 1000;
    private const int LongestName = 200;
    private const decimal MostMoney = 10_000_000;

    public static IReadOnlyList<Objection> Look(Booking booking, ShopRules rules, DateOnly today) =>
        [.. Whose(booking), .. What(booking), .. Words(booking), .. Money(booking, rules), .. Day(booking, today)];

    private static IEnumerable<Objection> Whose(Booking booking)
    {
        if (booking.CustomerId is null && string.IsNullOrWhiteSpace(booking.Name))
        {
            yield return new("The customer's name is missing.", "Choose a customer, or type the name of a new one.");
        }

        foreach (
            var (text, what) in new[] { (booking.Name, "name"), (booking.Phone, "telephone"), (booking.Mail, "mail address") }
        )
        {
            if (text.Length > LongestName)
            {
                yield return new($"The {what} is longer than {LongestName} characters.", "As it would stand on an envelope.");
            }
        }
    }

    private static IEnumerable<Objection> What(Booking booking)
    {
        if (string.IsNullOrWhiteSpace(booking.Maker) && string.IsNullOrWhiteSpace(booking.Model))
        {
            yield return new(
                "Neither maker nor model is named.",
                "What stands on its front or back; \"unknown\" when nothing does."
            );
        }

        if (booking.Maker.Length > LongestName || booking.Model.Length > LongestName || booking.Serial.Length > LongestName)
        {
            yield return new($"Maker, model or serial is longer than {LongestName} characters.", "As on the plate.");
        }

        if (booking.MainsVolts is not (>= 6 and <= 480))
        {
            yield return new(
                $"It cannot be strapped for {booking.MainsVolts:0} V.",
                "Volts rms on its plate or selector: 100, 120, 230."
            );
        }
    }

    private static IEnumerable<Objection> Words(Booking booking)
    {
        if (string.IsNullOrWhiteSpace(booking.Complaint))
        {
            yield return new("The complaint is missing.", "In the customer's own words.");
        }
        else if (booking.Complaint.Length > LongestComplaint)
        {
            yield return new(
                $"The complaint has {booking.Complaint.Length} characters.",
                $"Up to {LongestComplaint}: what it does, on which setting. The rest goes into notes."
            );
        }

        if (
            new[] { booking.Setting, booking.JustBefore, booking.Condition, booking.CameWith, booking.Address }.Any(t =>
                t.Length > LongestNote
            )
        )
        {
            yield return new($"One of the notes is longer than {LongestNote} characters.", "A few words each.");
        }
    }

    private static IEnumerable<Objection> Money(Booking booking, ShopRules rules)
    {
        var amounts = new (Amount? Amount, string What)[]
        {
            (booking.Worth, "what it is worth"),
            (booking.BenchFee, "the bench fee"),
            (booking.Limit, "the limit"),
            (booking.Deposit, "the deposit"),
        };
        foreach (var (amount, what) in amounts)
        {
            if (
                amount is not null
                && (amount.Figure is < 0 or > MostMoney || amount.Currency != rules.Currency || amount.Rounded() != amount)
            )
            {
                yield return new($"{amount.Figure} will not do for {what}.", $"0 or more {rules.Currency}, in whole coins.");
            }
        }
    }

    private static IEnumerable<Objection> Day(Booking booking, DateOnly today)
    {
        if (booking.Promised < today)
        {
            yield return new($"The promised day, {booking.Promised:O}, is past.", "Today or later, or no day.");
        }

        if (booking.Promised > today.AddYears(3))
        {
            yield return new($"The promised day, {booking.Promised:O}, is years away.", "A day within three years.");
        }
    }
}
