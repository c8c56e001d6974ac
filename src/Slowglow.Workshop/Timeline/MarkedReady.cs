namespace Slowglow.Workshop.Timeline;

/// <summary>The unit is on the shelf and its owner may come.</summary>
public sealed class MarkedReady : EntryWith<Readiness>;
