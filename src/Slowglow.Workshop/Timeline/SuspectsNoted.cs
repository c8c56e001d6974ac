namespace Slowglow.Workshop.Timeline;

/// <summary>What was suspected at that moment, with its chances: later readings change the suspects, not this.</summary>
public sealed class SuspectsNoted : EntryWith<NotedSuspects>;
