namespace Slowglow.Workshop.Timeline;

/// <summary>The customer accepted an option of a quote, or declined it.</summary>
public sealed class QuoteAnswered : EntryWith<Papers.QuoteAnswer>;
