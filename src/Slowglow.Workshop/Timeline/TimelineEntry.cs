namespace Slowglow.Workshop.Timeline;

/// <summary>Something that happened to a job. Entries are never changed or removed: a correction is a new entry.</summary>
public abstract class TimelineEntry
{
    /// <summary>Number of the job.</summary>
    public int JobNumber { get; init; }

    /// <summary>Counts from 1 within the job, without gaps.</summary>
    public int Sequence { get; init; }

    /// <summary>When it happened, by the shop's clock.</summary>
    public DateTimeOffset At { get; init; }

    /// <summary>True when a diagnosis depends on it.</summary>
    public virtual bool IsEvidence => false;
}
