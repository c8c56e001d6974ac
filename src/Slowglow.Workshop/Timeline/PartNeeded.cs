namespace Slowglow.Workshop.Timeline;

/// <summary>A part will be wanted.</summary>
public sealed class PartNeeded : EntryWith<Orders.NeededPart>;
