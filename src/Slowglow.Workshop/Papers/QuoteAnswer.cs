using Slowglow.Workshop.Timeline;

namespace Slowglow.Workshop.Papers;

/// <summary>What the customer said to a quote.</summary>
/// <param name="Quote">Sequence of the quote in the timeline.</param>
/// <param name="Option">Name of the option accepted; null when all were declined.</param>
/// <param name="Who">Who said so.</param>
/// <param name="Text">In their words; may be empty.</param>
public sealed record QuoteAnswer(int Quote, string? Option, string Who, Way Way, string Text);
