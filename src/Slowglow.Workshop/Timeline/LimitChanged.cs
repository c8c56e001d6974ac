namespace Slowglow.Workshop.Timeline;

/// <summary>The customer set another limit.</summary>
public sealed class LimitChanged : EntryWith<LimitChange>;
