namespace Slowglow.Workshop.Timeline;

/// <summary>Something worth remembering.</summary>
public sealed class NoteWritten : TimelineEntry
{
    public required string Text { get; init; }
}
