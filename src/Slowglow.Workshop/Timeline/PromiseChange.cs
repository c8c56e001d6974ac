namespace Slowglow.Workshop.Timeline;

/// <param name="Day">Null when nothing is promised any more.</param>
public sealed record PromiseChange(DateOnly? Day, string Reason);
