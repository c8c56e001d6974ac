namespace Slowglow.Workshop.Timeline;

/// <summary>The customer was told another day.</summary>
public sealed class PromiseChanged : EntryWith<PromiseChange>;
