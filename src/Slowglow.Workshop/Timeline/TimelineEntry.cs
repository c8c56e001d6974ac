namespace Slowglow.Workshop.Timeline;

/// <summary>Something that happened to a job. Entries are never changed or removed: a correction is a new entry.</summary>
public abstract class TimelineEntry
{
    private int jobNumber;
    private int sequence;
    private DateTimeOffset at;
    private string? by;

    /// <summary>Number of the job.</summary>
    public int JobNumber
    {
        get => jobNumber;
        init => jobNumber = value;
    }

    /// <summary>Counts from 1 within the job, without gaps.</summary>
    public int Sequence
    {
        get => sequence;
        init => sequence = value;
    }

    /// <summary>When it happened, by the shop's clock.</summary>
    public DateTimeOffset At
    {
        get => at;
        init => at = value;
    }

    /// <summary>Who wrote it; null where the shop is one person.</summary>
    public string? By
    {
        get => by;
        init => by = value;
    }

    /// <summary>True when a diagnosis depends on it.</summary>
    public virtual bool IsEvidence => false;

    /// <summary>Gives an entry that has not been stored yet its place in a timeline.</summary>
    public void Place(int job, int place, DateTimeOffset time, string? who) =>
        (jobNumber, sequence, at, by) = (job, place, time, who);
}
