namespace Slowglow.Workshop.Timeline;

/// <summary>A reading was wrong and counts no more.</summary>
public sealed class ReadingWithdrawn : TimelineEntry
{
    /// <summary>Sequence of the reading.</summary>
    public required int Reading { get; init; }

    /// <inheritdoc/>
    public override bool IsEvidence => true;
}
