namespace Slowglow.Workshop.Timeline;

/// <summary>The complaint was heard better, or put differently.</summary>
public sealed class ComplaintChanged : TimelineEntry
{
    /// <summary>In the customer's words.</summary>
    public required string Complaint { get; init; }

    /// <inheritdoc/>
    public override bool IsEvidence => true;
}
