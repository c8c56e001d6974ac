namespace Slowglow.Workshop.Timeline;

/// <summary>The customer was told what it would cost.</summary>
public sealed class QuoteGiven : EntryWith<Papers.Quote>;
