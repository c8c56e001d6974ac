using Slowglow.Workshop.Accounts;
using Slowglow.Workshop.Labour;
using Slowglow.Workshop.Money;
using Slowglow.Workshop.Orders;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Safety;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Workshop.Jobs;

/// <summary>The paper side of a job: its timeline, replayed. Entries that were struck out do not count.</summary>
public sealed class JobDealings
{
    private readonly IReadOnlyList<TimelineEntry> entries;

    private JobDealings(IReadOnlyList<TimelineEntry> counting) => entries = counting;

    /// <summary>Entries that count, in their order.</summary>
    public IReadOnlyList<TimelineEntry> Counting => entries;

    public static JobDealings After(IEnumerable<TimelineEntry> entries) => new(Striking.Counting(entries));

    public CounterNotes? Notes => entries.OfType<BookedIn>().Select(b => b.Notes).FirstOrDefault();

    public IReadOnlyList<GivenQuote> Quotes =>
        [
            .. entries
                .OfType<QuoteGiven>()
                .Select(q => new GivenQuote(
                    q.Sequence,
                    q.What,
                    entries.OfType<QuoteAnswered>().LastOrDefault(a => a.What.Quote == q.Sequence)?.What
                )),
        ];

    /// <summary>The option that the customer accepted last; null when none was.</summary>
    public QuoteOption? Accepted =>
        Quotes.Where(q => q.Answer?.Option is not null).Select(q => q.Quote.Named(q.Answer!.Option!)).LastOrDefault();

    public IReadOnlyList<OpenOrder> Orders => [.. entries.OfType<PartsOrdered>().Select(Order)];

    /// <summary>What deliveries to this job put into bins.</summary>
    public IReadOnlyList<BinnedPieces> Binned(string currency) =>
        [.. entries.OfType<PartsArrived>().SelectMany(a => BinnedBy(a.What, currency))];

    /// <summary>What a delivery puts, or has put, into bins.</summary>
    public IReadOnlyList<BinnedPieces> BinnedBy(Delivery delivery, string currency)
    {
        var landed =
            entries.OfType<PartsOrdered>().FirstOrDefault(o => o.Sequence == delivery.Order)?.What.Landed(currency) ?? [];
        return
        [
            .. landed
                .Zip(delivery.Pieces, delivery.Bins ?? [])
                .Where(l => l.Second > 0 && l.Third is not null)
                .Select(l => new BinnedPieces(l.Third!.Value, l.Second, l.First.LandedEach)),
        ];
    }

    public IReadOnlyList<FittedPart> Fitted => [.. entries.OfType<PartFitted>().Select(f => f.What)];

    public IReadOnlyList<NeededPart> Needed => [.. entries.OfType<PartNeeded>().Select(n => n.What)];

    /// <summary>Parts needed, and how far each has come.</summary>
    public IReadOnlyList<NeededStanding> NeededParts =>
        NeededStanding.Of(entries.OfType<PartNeeded>().Select(n => (n.Sequence, n.What)), Fitted, Orders);

    public IReadOnlyList<Worked> Hours => [.. entries.OfType<HoursWorked>().Select(h => h.What)];

    public IReadOnlyList<RunningTimer> Timers =>
        [
            .. entries
                .OfType<TimerStarted>()
                .Where(t => entries.OfType<HoursWorked>().All(h => h.What.Timer != t.Sequence))
                .Select(t => new RunningTimer(t.Sequence, t.What, t.At, t.By)),
        ];

    /// <summary>The last safety test; null when there was none.</summary>
    public SafetyTest? SafetyTest => entries.OfType<SafetyTested>().LastOrDefault()?.What;

    public RepairReport? Report => entries.OfType<ReportWritten>().LastOrDefault()?.What;

    public IReadOnlyList<Payment> Taken => [.. entries.OfType<MoneyTaken>().Select(m => m.What)];

    public IReadOnlyList<IssuedPaper> Papers => [.. entries.OfType<PaperIssued>().Select(p => p.What)];

    public IReadOnlyList<Photo> Photos => [.. entries.OfType<PhotoAdded>().Select(p => p.What)];

    /// <summary>When it was last marked ready; null when it is not, or went back on the bench since.</summary>
    public DateTimeOffset? ReadySince =>
        StateRules.After(entries) == JobState.ReadyToCollect
            ? entries.LastOrDefault(e => e is MarkedReady or StateChanged { State: JobState.ReadyToCollect })?.At
            : null;

    public int Reminders => ReadySince is { } since ? entries.Count(e => e is OwnerReminded && e.At >= since) : 0;

    public Handover? Handover => entries.OfType<HandedOver>().LastOrDefault()?.What;

    /// <summary>Limit of the card, unless the customer set another since.</summary>
    public Amount? Limit(Amount? onCard) =>
        entries.OfType<LimitChanged>().LastOrDefault() is { } changed ? changed.What.Limit : onCard;

    public JobAccount Account(string currency)
    {
        Amount Sum(IEnumerable<Amount> amounts) => amounts.Aggregate(Amount.Zero(currency), (a, b) => a + b);
        return new(
            Sum(Papers.Where(p => p.Kind == PaperKind.Invoice).Select(p => p.Total)),
            Sum(Papers.Where(p => p.Kind == PaperKind.CreditNote).Select(p => p.Total)),
            Sum(Taken.Select(p => p.Amount)),
            Sum(entries.OfType<MoneyReturned>().Select(p => p.What.Amount))
        );
    }

    private OpenOrder Order(PartsOrdered ordered)
    {
        var came = new int[ordered.What.Lines.Count];
        var deliveries = entries.OfType<PartsArrived>().Where(a => a.What.Order == ordered.Sequence).ToList();
        foreach (var arrived in deliveries)
        {
            for (var i = 0; i < Math.Min(came.Length, arrived.What.Pieces.Count); i++)
            {
                came[i] += arrived.What.Pieces[i];
            }
        }

        var calls = entries.OfType<OrderChased>().Where(c => c.What.Order == ordered.Sequence).ToList();
        var chases = calls.ConvertAll(c => c.What);
        return new(
            ordered.Sequence,
            ordered.What,
            came,
            chases.LastOrDefault(c => c.Promised is not null)?.Promised ?? ordered.What.Promised,
            chases.LastOrDefault(c => c.Tracking.Length > 0)?.Tracking ?? ordered.What.Tracking,
            new TimelineEntry[] { ordered }
                .Concat(calls)
                .Concat(deliveries)
                .Max(e => e.At)
        );
    }
}
