namespace Slowglow.Workshop.Timeline;

/// <summary>A meter was read.</summary>
public sealed class ReadingTaken : TimelineEntry
{
    /// <summary>The line as typed: <c>V1.6 = 62 V</c>.</summary>
    public required string Line { get; init; }

    /// <summary>Setup that the bench stood in; a line may name another itself.</summary>
    public required string Setup { get; init; }

    /// <inheritdoc/>
    public override bool IsEvidence => true;
}
