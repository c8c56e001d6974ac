namespace Slowglow.Workshop.Timeline;

/// <summary>The unit went home.</summary>
public sealed class HandedOver : EntryWith<Handover>;
