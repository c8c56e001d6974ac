using Slowglow.Workshop.Jobs;
using Slowglow.Workshop.Timeline;

namespace Slowglow.Web.Bench.Words;

/// <summary>Says what happened.</summary>
public static class TimelineWords
{
    /// <summary>What kind of thing it was: "Reading", "Note".</summary>
    public static string Kind(TimelineEntry entry) =>
        entry switch
        {
            BookedIn => "Booked in",
            ComplaintChanged => "Complaint changed",
            SetupDescribed => "Setup described",
            SetupChosen => "Setup changed",
            ReadingTaken => "Reading taken",
            ReadingWithdrawn => "Reading withdrawn",
            StateChanged => "State changed",
            _ => DealingsWords.Kind(entry) ?? "Note",
        };

    /// <summary>What it said.</summary>
    public static string Say(TimelineEntry entry, IReadOnlyList<TimelineEntry> all) =>
        entry switch
        {
            BookedIn booked => booked.Complaint,
            ComplaintChanged changed => changed.Complaint,
            SetupDescribed described =>
                $"{described.Name}: {(described.Keys.Length == 0 ? "as the sheet stands" : described.Keys)}",
            SetupChosen chosen => chosen.Setup,
            ReadingTaken taken => $"{taken.Line} ({taken.Setup})",
            ReadingWithdrawn withdrawn => all.OfType<ReadingTaken>().FirstOrDefault(r => r.Sequence == withdrawn.Reading)?.Line
                ?? "",
            StateChanged changed => JobStateWords.Say(changed.State),
            NoteWritten note => note.Text,
            _ => DealingsWords.Say(entry) ?? "",
        };
}
