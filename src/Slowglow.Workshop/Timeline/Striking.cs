namespace Slowglow.Workshop.Timeline;

/// <summary>Which entries count.</summary>
public static class Striking
{
    /// <summary>Entries in their order, without those that were struck out.</summary>
    public static IReadOnlyList<TimelineEntry> Counting(IEnumerable<TimelineEntry> entries)
    {
        var all = entries.OrderBy(e => e.Sequence).ToList();
        var struck = all.OfType<EntryStruck>().Select(s => s.What.Entry).ToHashSet();
        return struck.Count == 0 ? all : [.. all.Where(e => !struck.Contains(e.Sequence))];
    }

    /// <summary>What keeps an entry from being struck out; empty when nothing does.</summary>
    public static IReadOnlyList<Objection> Look(IReadOnlyList<TimelineEntry> counting, Strike strike)
    {
        var entry = counting.FirstOrDefault(e => e.Sequence == strike.Entry);
        return entry switch
        {
            null => [new($"There is no entry {strike.Entry} that counts.", "One of the timeline that is not struck out yet.")],
            BookedIn =>
            [
                new("The booking itself cannot be struck out.", "Write what is right as a note, or change the complaint."),
            ],
            EntryStruck => [new("A correction cannot be struck out.", "Enter what is right anew.")],
            PaperIssued => [new("A paper that has a number stays.", "Put an invoice right with a credit note.")],
            ReadingTaken => [new("A reading is withdrawn at the bench.", "Use the withdraw button beside it.")],
            SetupDescribed or SetupChosen or ComplaintChanged or ReadingWithdrawn or SheetAttached =>
            [
                new("Entries of the bench are not struck out.", "Make the right entry; the last one counts."),
            ],
            _ when string.IsNullOrWhiteSpace(strike.Reason) =>
            [
                new("The reason is missing.", "What was wrong with it, in a few words."),
            ],
            _ when LeanedOn(counting, entry.Sequence) is { } on =>
            [
                new($"Entry {on.Sequence} leans on this one.", $"Strike out entry {on.Sequence} first."),
            ],
            _ => [],
        };
    }

    private static TimelineEntry? LeanedOn(IReadOnlyList<TimelineEntry> counting, int sequence) =>
        counting.FirstOrDefault(e =>
            e switch
            {
                QuoteAnswered answered => answered.What.Quote == sequence,
                OrderChased chased => chased.What.Order == sequence,
                PartsArrived arrived => arrived.What.Order == sequence,
                HoursWorked worked => worked.What.Timer == sequence,
                _ => false,
            }
        );
}
