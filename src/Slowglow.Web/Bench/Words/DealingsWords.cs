using System.Globalization;
using Slowglow.Workshop.Accounts;
using Slowglow.Workshop.Papers;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Web.Bench.Words;

/// <summary>Says what happened on the paper side of a job.</summary>
public static class DealingsWords
{
    /// <summary>What kind of thing it was; null for entries of the bench.</summary>
    public static string? Kind(TimelineEntry entry) =>
        entry switch
        {
            CallNoted => "Spoken with",
            QuoteGiven => "Quote given",
            QuoteAnswered => "Quote answered",
            LimitChanged => "Limit changed",
            PromiseChanged => "Promise changed",
            MoneyTaken => "Money taken",
            MoneyReturned => "Money given back",
            PaperIssued issued => issued.What.Kind == PaperKind.Invoice ? "Invoice issued" : "Credit note issued",
            ReportWritten => "Report written",
            MarkedReady => "Marked ready",
            HandedOver => "Handed over",
            OwnerReminded => "Owner reminded",
            EntryStruck => "Struck out",
            _ => Work(entry),
        };

    /// <summary>What it said; null for entries of the bench.</summary>
    public static string? Say(TimelineEntry entry) =>
        entry switch
        {
            CallNoted { What: var call } => $"{call.With}, {call.Way.ToString().ToLowerInvariant()}: {call.Text}",
            OwnerReminded { What: var call } => $"{call.With}: {call.Text}",
            QuoteGiven { What: var quote } => string.Join("; ", quote.Options.Select(o => $"{o.Name} {o.Priced.Total}")),
            QuoteAnswered { What: var a } =>
                $"{a.Who}: {(a.Option is { } option ? $"accepts {option}" : "declines")} (quote {a.Quote}) {a.Text}",
            LimitChanged { What: var change } => change.Limit?.ToString() ?? "no limit",
            PromiseChanged { What: var change } => $"{(change.Day is { } day ? Day(day) : "no day")}: {change.Reason}",
            MoneyTaken { What: var payment } => Money(payment),
            MoneyReturned { What: var payment } => Money(payment),
            PaperIssued { What: var paper } =>
                $"no. {paper.Number}, {paper.Total}{(paper.Credits is { } c ? $", over invoice {c}" : "")}",
            ReportWritten { What: var report } => report.Found,
            MarkedReady { What: var ready } => string.Join(". ", new[] { ready.Bin, ready.Reason }.Where(t => t.Length > 0)),
            HandedOver { What: var handover } => $"to {handover.To}{(handover.With.Length > 0 ? $", with {handover.With}" : "")}",
            EntryStruck { What: var strike } => $"entry {strike.Entry}: {strike.Reason}",
            _ => SayWork(entry),
        };

    private static string? Work(TimelineEntry entry) =>
        entry switch
        {
            SuspectsNoted => "Suspects as they stood",
            PartNeeded => "Part needed",
            PartsOrdered => "Ordered",
            OrderChased => "Chased",
            PartsArrived => "Arrived",
            PartFitted => "Fitted",
            TimerStarted => "Timer started",
            HoursWorked => "Worked",
            SafetyTested => "Safety test",
            PhotoAdded => "Photograph",
            SheetAttached => "Sheet laid beside it",
            _ => null,
        };

    private static string? SayWork(TimelineEntry entry) =>
        entry switch
        {
            SuspectsNoted { What: var noted } => Suspects(noted),
            PartNeeded { What: var needed } => $"{needed.Quantity} x {needed.Part} {needed.Why}",
            PartsOrdered { What: var order } =>
                $"{order.Supplier}: {string.Join("; ", order.Lines.Select(l => $"{l.Quantity} x {l.Part}"))}, {order.Total}{(order.Promised is { } day ? $", promised {Day(day)}" : "")}",
            OrderChased { What: var chase } =>
                $"order {chase.Order}: {chase.Text}{(chase.Promised is { } day ? $", now {Day(day)}" : "")}",
            PartsArrived { What: var delivery } => $"of order {delivery.Order}: {delivery.Pieces.Sum()} pieces",
            PartFitted { What: var part } => $"{part.Quantity} x {part.Part}",
            TimerStarted { What: var start } => $"{start.What} ({start.Rate})",
            HoursWorked { What: var worked } => $"{worked.Minutes} min {worked.What} ({worked.Rate})",
            SafetyTested { What: var test } => test.Passed
                ? $"passed, {test.Set}"
                : $"FAILED: {string.Join(", ", test.Failures)}",
            PhotoAdded { What: var photo } => photo.Caption,
            SheetAttached { What: var sheet } => sheet.Title,
            _ => null,
        };

    private static string Suspects(NotedSuspects noted) =>
        string.Join(", ", noted.Suspects.Select(s => $"{s.Words} {Chances.Figure(s.Probability)}"))
        + $"; nothing wrong {Chances.Figure(noted.Healthy)}, none of these {Chances.Figure(noted.NoneOfThese)}; from {noted.Readings} readings";

    private static string Money(Payment payment) => $"{payment.Amount} {payment.By.ToString().ToLowerInvariant()} {payment.Note}";

    private static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
}
