using Slowglow.Workshop.Timeline;

namespace Slowglow.Workshop.Jobs;

/// <summary>Where a job stands: its timeline, replayed.</summary>
/// <param name="LastSequence">Sequence of the newest entry; 0 for an empty timeline.</param>
/// <param name="EvidenceSequence">Sequence of the newest entry that a diagnosis depends on (complaint, setups, readings).</param>
/// <param name="Setups">Named setups in the order they were described; a name is never described twice.</param>
/// <param name="ChosenSetup">Name of the setup the bench stands in; null = the first.</param>
/// <param name="Readings">Readings that have not been withdrawn, oldest first.</param>
public sealed record JobStanding(
    JobState State,
    string Complaint,
    IReadOnlyList<SetupDescribed> Setups,
    string? ChosenSetup,
    IReadOnlyList<ReadingTaken> Readings,
    int LastSequence,
    int EvidenceSequence
)
{
    private static readonly JobStanding Blank = new(JobState.BookedIn, "", [], null, [], 0, 0);

    /// <summary>Replays entries in the order of their sequence.</summary>
    public static JobStanding After(IEnumerable<TimelineEntry> entries)
    {
        var all = entries.OrderBy(e => e.Sequence).ToList();
        return all.Aggregate(Blank, (standing, entry) => standing.Then(entry)) with { State = StateRules.After(all) };
    }

    private JobStanding Then(TimelineEntry entry)
    {
        var next = entry switch
        {
            BookedIn booked => this with { Complaint = booked.Complaint },
            ComplaintChanged changed => this with { Complaint = changed.Complaint },
            SetupDescribed described => this with { Setups = [.. Setups, described] },
            SetupChosen chosen => this with { ChosenSetup = chosen.Setup },
            ReadingTaken taken => this with { Readings = [.. Readings, taken] },
            ReadingWithdrawn withdrawn => this with { Readings = [.. Readings.Where(r => r.Sequence != withdrawn.Reading)] },
            _ => this,
        };
        return next with
        {
            LastSequence = entry.Sequence,
            EvidenceSequence = entry.IsEvidence ? entry.Sequence : EvidenceSequence,
        };
    }
}
