namespace Slowglow.Workshop.Timeline;

/// <summary>A named setup was described. It keeps its meaning, because readings were taken in it: another one takes another name.</summary>
public sealed class SetupDescribed : TimelineEntry
{
    /// <summary>One word: slow, cold.</summary>
    public required string Name { get; init; }

    /// <summary>Its keys as in a readings document: <c>mains: 110 V, limiter: 40 W, valves: out</c>. Empty = sheet mains, nothing pulled.</summary>
    public required string Keys { get; init; }

    /// <inheritdoc/>
    public override bool IsEvidence => true;
}
