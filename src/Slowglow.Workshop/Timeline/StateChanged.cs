namespace Slowglow.Workshop.Timeline;

/// <summary>The job moved on.</summary>
public sealed class StateChanged : TimelineEntry
{
    public required Jobs.JobState State { get; init; }
}
