namespace Slowglow.Workshop.Timeline;

/// <summary>The owner was reminded to collect.</summary>
public sealed class OwnerReminded : EntryWith<Call>;
