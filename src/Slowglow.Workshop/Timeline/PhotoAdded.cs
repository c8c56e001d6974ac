namespace Slowglow.Workshop.Timeline;

/// <summary>A photograph was taken.</summary>
public sealed class PhotoAdded : EntryWith<Photo>;
