namespace Slowglow.Workshop.Timeline;

/// <param name="Entry">Sequence of the entry.</param>
public sealed record Strike(int Entry, string Reason);
