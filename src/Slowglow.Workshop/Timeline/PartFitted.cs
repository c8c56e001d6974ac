namespace Slowglow.Workshop.Timeline;

/// <summary>A part went in and is to be charged.</summary>
public sealed class PartFitted : EntryWith<Orders.FittedPart>;
