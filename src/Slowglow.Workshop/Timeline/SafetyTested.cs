namespace Slowglow.Workshop.Timeline;

/// <summary>An electrical safety test was made.</summary>
public sealed class SafetyTested : EntryWith<Safety.SafetyTest>;
