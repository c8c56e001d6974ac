using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Orders;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Shop;

namespace Slowglow.Workshop.Timeline;

/// <summary>What the rules say to an entry before it is stored.</summary>
public static class EntryRules
{
    private const int LongestText = 4000;
    private const int LongestName = 200;
    private const int MostMinutes = 24 * 60;
    private const int MostPhotos = 8;
    private const decimal MostMoney = 10_000_000;

    /// <summary>What keeps the entry from standing in that timeline; empty when nothing does.</summary>
    public static IReadOnlyList<Objection> Look(TimelineEntry entry, JobDealings dealings, ShopRules rules, DateOnly today) =>
        entry switch
        {
            NoteWritten note => Text(note.Text, "The note"),
            CallNoted { What: var call } => [.. Named(call.With, "Who was spoken with"), .. Text(call.Text, "What was said")],
            OwnerReminded { What: var call } => Remind(call, dealings),
            QuoteGiven { What: var quote } => Give(quote, today),
            QuoteAnswered { What: var answer } => Answer(answer, dealings, today),
            LimitChanged { What: var change } =>
            [
                .. Named(change.Who, "Who said so"),
                .. Below(change.Limit?.Figure, "The limit"),
            ],
            PromiseChanged { What: var change } => Promise(change, today),
            SafetyTested { What: var test } => [.. Named(test.Who, "Who tested"), .. test.Look()],
            MoneyTaken { What: var payment } => payment.Look(rules.Currency),
            MoneyReturned { What: var payment } => Return(payment, dealings, rules),
            ReportWritten { What: var report } => Report(report),
            MarkedReady { What: var ready } => ReadyRule.LookReady(dealings, ready.Reason),
            HandedOver { What: var handover } => ReadyRule.LookHandover(dealings, handover.To),
            EntryStruck { What: var strike } => Striking.Look(dealings.Counting, strike),
            _ => Work(entry, dealings, rules),
        };

    private static IReadOnlyList<Objection> Work(TimelineEntry entry, JobDealings dealings, ShopRules rules) =>
        entry switch
        {
            PartNeeded { What: var needed } => [.. Named(needed.Part, "The part"), .. Pieces(needed.Quantity)],
            PartsOrdered { What: var order } => order.Look(),
            OrderChased { What: var chase } => [.. OrderOf(chase.Order, dealings), .. Text(chase.Text, "What they said")],
            PartsArrived { What: var delivery } => Arrive(delivery, dealings),
            PartFitted { What: var part } =>
            [
                .. Named(part.Part, "The part"),
                .. Pieces(part.Quantity),
                .. Below(part.CostEach, "The cost"),
                .. Below(part.PriceEach, "The price"),
            ],
            TimerStarted { What: var start } => [.. Rate(start.Rate, rules), .. AlreadyRuns(entry, dealings)],
            PhotoAdded { What.Caption.Length: > LongestName } =>
            [
                new($"The caption is longer than {LongestName} characters.", "A few words."),
            ],
            HoursWorked { What: var worked } => [.. Rate(worked.Rate, rules), .. Minutes(worked.Minutes)],
            _ => [],
        };

    private static IReadOnlyList<Objection> Text(string text, string what) =>
        string.IsNullOrWhiteSpace(text) ? [new($"{what} is empty.", "A sentence or two.")]
        : text.Length > LongestText ? [new($"{what} is longer than {LongestText} characters.", "Keep to what matters.")]
        : [];

    private static IReadOnlyList<Objection> Named(string text, string what) =>
        string.IsNullOrWhiteSpace(text) ? [new($"{what} is missing.", "A few words.")]
        : text.Length > LongestName ? [new($"{what} is longer than {LongestName} characters.", "A few words.")]
        : [];

    private static IReadOnlyList<Objection> Below(decimal? figure, string what) =>
        figure < 0 ? [new($"{what} is below 0.", "0 or more.")]
        : figure > MostMoney ? [new($"{what} is beyond reason.", "Up to 10,000,000.")]
        : [];

    private static IReadOnlyList<Objection> Pieces(int quantity) =>
        quantity is < 1 or > 10_000 ? [new($"{quantity} pieces cannot be.", "1 to 10,000.")] : [];

    private static IReadOnlyList<Objection> Minutes(int minutes) =>
        minutes is < 1 or > MostMinutes
            ? [new($"{minutes} minutes cannot be one piece of work.", "1 to 1440: a day is the most.")]
            : [];

    private static IReadOnlyList<Objection> Rate(string rate, ShopRules rules) =>
        rules.Labour.Any(l => l.Name == rate)
            ? []
            : [new($"There is no labour rate \"{rate}\".", $"Set: {string.Join(", ", rules.Labour.Select(l => l.Name))}.")];

    private static IReadOnlyList<Objection> AlreadyRuns(TimelineEntry entry, JobDealings dealings) =>
        dealings.Timers.Any(t => t.By == entry.By) ? [new("A timer runs on this job already.", "Stop it first.")] : [];

    private static IReadOnlyList<Objection> Promise(PromiseChange change, DateOnly today) =>
        change.Day < today ? [new($"{change.Day:O} is past.", "Today or later, or no day.")] : Text(change.Reason, "The reason");

    private static IReadOnlyList<Objection> Remind(Call call, JobDealings dealings) =>
        dealings.ReadySince is null
            ? [new("The unit is not ready to collect.", "Mark it ready first.")]
            : Text(call.Text, "What was said");

    private static IReadOnlyList<Objection> Give(Quote quote, DateOnly today)
    {
        if (quote.Options.Count == 0 || quote.Options.Any(o => string.IsNullOrWhiteSpace(o.Name) || o.Priced.Lines.Count == 0))
        {
            return
            [
                new("The quote has no option, or one without a name or lines.", "At least one way of doing it, with its lines."),
            ];
        }

        return quote.Options.Select(o => o.Name).Distinct().Count() < quote.Options.Count
                ? [new("Two options have the same name.", "A name each, so that the answer says which.")]
            : quote.ValidUntil < today ? [new($"{quote.ValidUntil:O} is past.", "Today or later.")]
            : [];
    }

    private static IReadOnlyList<Objection> Answer(QuoteAnswer answer, JobDealings dealings, DateOnly today)
    {
        if (dealings.Quotes.FirstOrDefault(q => q.Sequence == answer.Quote) is not { } given)
        {
            return [new("There is no such quote.", "One of the timeline that is not struck out.")];
        }

        return answer.Option is { } option && given.Quote.Named(option) is null
                ? [new($"The quote has no option \"{option}\".", string.Join("; ", given.Quote.Options.Select(o => o.Name)))]
            : answer.Option is not null && given.Quote.ValidUntil < today
                ? [new($"The quote was good until {given.Quote.ValidUntil:O}.", "Give a new one at today's prices.")]
            : Named(answer.Who, "Who answered");
    }

    private static IReadOnlyList<Objection> Return(Accounts.Payment payment, JobDealings dealings, ShopRules rules)
    {
        if (payment.Look(rules.Currency) is { Count: > 0 } wrong)
        {
            return wrong;
        }

        var account = dealings.Account(rules.Currency);
        var held = account.Paid - account.Returned;
        return payment.Amount.Figure > held.Figure
            ?
            [
                new(
                    $"The customer has paid {held} in all.",
                    "No more than that can be given back; beyond it, write a credit note."
                ),
            ]
            : [];
    }

    private static IReadOnlyList<Objection> Report(RepairReport report) =>
        [
            .. Text(report.Found, "What was wrong"),
            .. Text(report.Done, "What was done"),
            .. report.Why.Length + report.Advice.Length > 2 * LongestText
                ? [new Objection("Why it sounded like that, or the advice, is too long.", $"{LongestText} characters each.")]
                : Array.Empty<Objection>(),
            .. report.WarrantyMonths is < 0 or > 120
                ? [new Objection($"A warranty of {report.WarrantyMonths} months cannot be.", "0 to 120.")]
                : Array.Empty<Objection>(),
            .. report.Photos is { Count: > MostPhotos }
                ? [new Objection($"{report.Photos.Count} photographs are too many for a report.", $"Up to {MostPhotos}.")]
                : Array.Empty<Objection>(),
        ];

    private static IReadOnlyList<Objection> OrderOf(int order, JobDealings dealings) =>
        dealings.Orders.Any(o => o.Sequence == order)
            ? []
            : [new("There is no such order.", "One of the timeline that is not struck out.")];

    private static IReadOnlyList<Objection> Arrive(Delivery delivery, JobDealings dealings)
    {
        if (dealings.Orders.FirstOrDefault(o => o.Sequence == delivery.Order) is not { } order)
        {
            return OrderOf(delivery.Order, dealings);
        }

        if (
            delivery.Pieces.Count != order.Order.Lines.Count
            || delivery.Pieces.Any(p => p < 0)
            || delivery.Pieces.All(p => p == 0)
        )
        {
            return [new("Nothing came, or less than nothing.", "How many pieces of each line came; at least one.")];
        }

        var over = order
            .Order.Lines.Where((l, i) => order.Came[i] + delivery.Pieces[i] > l.Quantity)
            .Select(l => l.Part)
            .ToList();
        return over.Count == 0
            ? []
            : [new($"More came than was ordered: {string.Join("; ", over)}.", "Up to what is missing; note the rest.")];
    }
}
