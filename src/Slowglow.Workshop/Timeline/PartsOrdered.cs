namespace Slowglow.Workshop.Timeline;

/// <summary>Parts, or work elsewhere, were ordered.</summary>
public sealed class PartsOrdered : EntryWith<Orders.PartsOrder>;
