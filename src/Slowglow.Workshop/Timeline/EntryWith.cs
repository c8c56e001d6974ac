namespace Slowglow.Workshop.Timeline;

/// <summary>An entry that carries a record of what happened.</summary>
public abstract class EntryWith<T> : TimelineEntry
    where T : class
{
    public required T What { get; init; }
}
