namespace Slowglow.Workshop.Timeline;

/// <summary>Somebody was spoken with.</summary>
public sealed class CallNoted : EntryWith<Call>;
