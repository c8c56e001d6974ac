namespace Slowglow.Workshop.Timeline;

/// <summary>The unit came over the counter.</summary>
public sealed class BookedIn : TimelineEntry
{
    /// <summary>In the customer's words.</summary>
    public required string Complaint { get; init; }

    /// <summary>What else was noted at the counter; null on old cards.</summary>
    public CounterNotes? Notes { get; init; }

    /// <inheritdoc/>
    public override bool IsEvidence => true;
}
